/** What follows the steps: words whose step is gone, the table of seam allowance errors, templates and cautions. */
import type { ReactNode } from 'react'
import { type Block, type Booklet, dropStepWords } from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { StepPicture } from '../../drawing/StepPicture.tsx'
import { currentLanguage, t, tn } from '../../words/words.ts'
import { RehearsalTable } from './RehearsalTable.tsx'

export function BookletAppendix({ booklet, block }: { readonly booklet: Booklet; readonly block: Block }) {
  const { allowanceTest, seamAdvice, unit, cautions, templates } = booklet
  return (
    <>
      <OrphanedWords orphans={booklet.orphans} />
      <Foldout title={t('About your seam allowance')}>
        <Sentences sentences={[...seamAdvice, ...allowanceTest.sentences]} />
        {allowanceTest.rows.length > 0 && <RehearsalTable rows={allowanceTest.rows} unit={unit} />}
      </Foldout>
      {templates.length > 0 && (
        <Foldout title={tn(templates.length, '1 template', '{n} templates')}>
          {templates.map(({ key, name, sentences, drawing }) => (
            <div key={key} className="template">
              <h4>{name}</h4>
              <StepPicture drawing={drawing} fabrics={block.fabrics} unit={unit} />
              <Sentences sentences={sentences} />
            </div>
          ))}
        </Foldout>
      )}
      <Foldout title={t('Work safely')}>
        {cautions.map(({ about, title, sentences }) => (
          <div key={about}>
            <h4>{title}</h4>
            <Sentences sentences={sentences} />
          </div>
        ))}
      </Foldout>
    </>
  )
}

/** Words, notes and photographs of steps that the block no longer has. They are kept until the maker throws them away. */
function OrphanedWords({ orphans }: { readonly orphans: Booklet['orphans'] }) {
  if (orphans.length === 0) return null
  return (
    <section className="part orphans" lang={currentLanguage()} aria-label={t('Text from steps that are gone')}>
      <h3>{t('Text from steps that are gone')}</h3>
      <p className="hint">{t('The block no longer has these steps. Your text stays in the file and comes back when the step does.')}</p>
      <ul>
        {orphans.map(({ key, words, note, photograph }) => (
          <li key={key}>
            {words !== undefined && <p>{words}</p>}
            {note !== undefined && <p className="note">{note}</p>}
            {photograph !== undefined && <img className="photograph" src={photograph} alt={t('Your photo of a step that is gone')} />}
            <button className="danger" type="button" onClick={() => edit(dropStepWords(key))}>
              {t('Delete')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Foldout({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <details className="part">
      <summary lang={currentLanguage()}>{title}</summary>
      {children}
    </details>
  )
}

const Sentences = ({ sentences }: { readonly sentences: readonly string[] }) => sentences.map((sentence) => <p key={sentence}>{sentence}</p>)
