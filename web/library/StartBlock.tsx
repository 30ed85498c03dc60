/** Ways to start: a new block from a star, a lantern or an empty grid, a quilt, a file to open, and all blocks saved in one file. */
import { emptyQuilt } from '../document/starters/emptyQuilt.ts'
import { setView } from '../document/store.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { writeBlocks } from '../keeping/blocksFile.ts'
import { download } from '../keeping/download.ts'
import { beginBlock, STARTERS } from '../keeping/openBlock.ts'
import { blocksToSave, tryOrNotify } from '../keeping/blockActions.ts'
import { t, tn } from '../words/words.ts'
import { OpenFileButton } from './OpenFileButton.tsx'

const NEW_BLOCKS = [
  ['star', () => t('Star')],
  ['lantern', () => t('Lantern')],
  ['empty', () => t('Empty grid')],
] as const

interface Props {
  /** How many blocks the library has. */
  readonly count: number
  /** Called when a block was opened on the board. */
  readonly onOpened: () => void
}

export function StartBlock({ count, onOpened }: Props) {
  return (
    <div className="start-row">
      <h3>{t('Start a new block')}</h3>
      <ul className="starts">
        {NEW_BLOCKS.map(([starter, name]) => (
          <li key={starter}>
            <button type="button" onClick={() => void beginBlock(STARTERS[starter]).then((begun) => begun && onOpened())}>
              <BlockPicture load={async () => STARTERS[starter]} stamp={starter} side={34} />
              {name()}
            </button>
          </li>
        ))}
      </ul>
      <div className="buttons">
        <button type="button" onClick={() => void beginBlock(emptyQuilt()).then((begun) => begun && onOpened())}>
          {t('Start a quilt')}
        </button>
        <OpenFileButton done={onOpened} />
        {count > 0 && (
          <button type="button" onClick={() => void tryOrNotify(saveAll)}>
            {t('Save all in one file')}
          </button>
        )}
      </div>
    </div>
  )
}

async function saveAll(): Promise<void> {
  const blocks = await blocksToSave()
  download('nestwright-blocks.json', writeBlocks(blocks), 'application/json')
  setView({ notice: tn(blocks.length, 'One block saved in a file.', '{n} blocks saved in a file.') })
}
