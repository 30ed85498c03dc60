/** The booklet on screen: the maker's title and name, every step with its pictures, and the maker's own words, notes and photographs. */
import { type Block, type Booklet, setBookletBlocks, setBookletBy, setBookletTitle, setIntroduction } from '../../../geometry/index.ts'
import { CountField } from '../../controls/CountField.tsx'
import { edit } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { BookletAppendix } from './BookletAppendix.tsx'
import { StepItem } from './StepItem.tsx'
import { WordsField } from './WordsField.tsx'
import './bookletPanel.css'

interface Props {
  readonly block: Block
  /** null until it is written. */
  readonly booklet: Booklet | null
  /** Whether the block has changed since. */
  readonly outdated: boolean
  /** Why there is none. */
  readonly trouble: string | null
}

export function BookletPanel({ block, booklet, outdated, trouble }: Props) {
  return (
    <section aria-labelledby="booklet-title" className="booklet">
      <h2 id="booklet-title">{t('Booklet')}</h2>
      <TitleFields block={block} />
      {trouble !== null && <p className="trouble">{trouble}</p>}
      {booklet === null && trouble === null && <p className="hint">{t('Writing the steps…')}</p>}
      {booklet !== null && (
        <div className={outdated ? 'outdated' : ''} lang={booklet.language}>
          <BookletProblems problems={booklet.problems} />
          <BookletParts booklet={booklet} block={block} />
          <BookletAppendix booklet={booklet} block={block} />
        </div>
      )}
    </section>
  )
}

/** As many as a class or a quilt wants; a file may say another number. */
const COUNTS = Array.from({ length: 36 }, (_, at) => at + 1)

function TitleFields({ block }: { readonly block: Block }) {
  const { title = '', by = '', introduction = '', blocks = 1 } = block.booklet ?? {}
  return (
    <div className="title-fields">
      <WordsField label={t('Title')} value={title} placeholder={block.name} onCommit={(words) => edit(setBookletTitle(words))} />
      <WordsField label={t('By')} value={by} placeholder={t('your name')} onCommit={(words) => edit(setBookletBy(words))} />
      <CountField
        label={t('Blocks to make')}
        value={blocks}
        choices={[...new Set([...COUNTS, blocks])]}
        onChange={(number) => edit(setBookletBlocks(number))}
      />
      <WordsField label={t('Introduction')} value={introduction} multiline onCommit={(words) => edit(setIntroduction(words))} />
    </div>
  )
}

function BookletProblems({ problems }: { readonly problems: Booklet['problems'] }) {
  if (problems.length === 0) return null
  return (
    <ul className="problems">
      {problems.map((problem) => (
        <li key={problem}>{problem}</li>
      ))}
    </ul>
  )
}

/** The parts of the booklet; steps are numbered through all of them. */
function BookletParts({ booklet, block }: { readonly booklet: Booklet; readonly block: Block }) {
  let number = 0
  return booklet.parts.map(({ key, title, steps }) => (
    <section key={key} className="part" aria-label={title}>
      <h3>{title}</h3>
      <ol start={number + 1}>
        {steps.map((step) => {
          number += 1
          return <StepItem key={step.key} step={step} number={number} block={block} unit={booklet.unit} />
        })}
      </ol>
    </section>
  ))
}
