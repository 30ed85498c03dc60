/** One block of the library: its picture, name and time. Pressing it opens it; a second button shows what else can be done with it. */
import { displayName } from '../document/blockNames.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { documentOf } from '../keeping/openBlock.ts'
import type { Card } from '../keeping/schema.ts'
import { restoreBlock, tryOrNotify } from '../keeping/blockActions.ts'
import { t } from '../words/words.ts'
import { dayOrTime } from './timeText.ts'

interface Props {
  readonly card: Card
  /** Whether this is the block on the board. */
  readonly open: boolean
  /** Whether its details are shown. */
  readonly chosen: boolean
  readonly onOpen: () => void
  readonly onDetails: () => void
}

export function BlockCard({ card, open, chosen, onOpen, onDetails }: Props) {
  const { id, type, name, changed, aside } = card
  const label = displayName({ name })
  return (
    <li className={open ? 'card open' : 'card'}>
      <button
        type="button"
        className="face"
        // biome-ignore lint/a11y/noAutofocus: the dialog starts at the block that is on the board
        autoFocus={open}
        aria-current={open}
        aria-label={aside === null ? t('Open {name}', { name: label }) : t('Restore {name}', { name: label })}
        onClick={aside === null ? onOpen : () => void tryOrNotify(() => restoreBlock(id))}
      >
        <BlockPicture load={() => documentOf(id)} stamp={`${id} ${changed}`} side={148} />
        <span className="card-name">{label}</span>
        {type === 'quilt' && <span className="card-type">{t('Quilt')}</span>}
        <span className="card-time">
          {aside === null ? (open ? t('open now') : dayOrTime(changed)) : t('archived {when}', { when: dayOrTime(aside) })}
        </span>
      </button>
      {aside === null && (
        <button
          type="button"
          className="about"
          id={detailsButtonId(id)}
          aria-expanded={chosen}
          aria-label={t('More about {name}', { name: label })}
          onClick={onDetails}
        >
          <svg viewBox="0 0 20 20" width="18" height="18" fill="none" stroke="currentColor" strokeWidth="1.8" aria-hidden="true">
            <path d="M3 6h14M3 10h14M3 14h9" />
          </svg>
        </button>
      )}
    </li>
  )
}

/** The element id of the button that shows a block's details. */
export const detailsButtonId = (id: string): string => `more-${id}`
