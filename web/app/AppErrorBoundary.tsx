/**
 * The page, or where it cannot be drawn one sentence and ways on that lose nothing.
 *
 * The same block would lie on the board again after the page is loaded anew: so it can be undone, or left among the blocks.
 */
import { Component, type ReactNode } from 'react'
import { emptyGrid } from '../document/starters/emptyGrid.ts'
import { beginBlock } from '../keeping/openBlock.ts'
import { saveFile } from '../keeping/download.ts'
import { getState, undo } from '../document/store.ts'
import { t } from '../words/words.ts'

interface Props {
  readonly children: ReactNode
}

/** A class, because only one can hear that a part below it failed. */
export class AppErrorBoundary extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true }
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children
    const again = (): void => this.setState({ failed: false })
    return (
      <main className="missing" role="alert">
        <p>
          {t(
            'The page could not be drawn with this block on the board. Undo the last change, or lay an empty grid there: the block stays among yours.',
          )}
        </p>
        <div className="buttons">
          <button
            type="button"
            disabled={getState().history.past.length === 0}
            onClick={() => {
              undo()
              again()
            }}
          >
            {t('Undo')}
          </button>
          <button type="button" onClick={() => void beginBlock(emptyGrid).then(again)}>
            {t('Lay an empty grid')}
          </button>
          <button type="button" onClick={() => saveFile(getState().history.block)}>
            {t('Save it as a file')}
          </button>
          <button type="button" onClick={() => window.location.reload()}>
            {t('Load the page anew')}
          </button>
        </div>
      </main>
    )
  }
}
