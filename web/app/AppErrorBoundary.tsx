/**
 * The page, or if it cannot be rendered, a message and ways to go on without losing anything.
 *
 * Reloading alone would put the same block on the board again. So the last change can be undone, or an empty grid opened; the block stays in the library.
 */
import { Component, type ReactNode } from 'react'
import { beginBlock, STARTERS } from '../keeping/openBlock.ts'
import { saveFile } from '../keeping/download.ts'
import { getState, openDocument, undo } from '../document/store.ts'
import { t } from '../words/words.ts'

interface Props {
  readonly children: ReactNode
}

/** A class, because React only tells class components that a child failed. */
export class AppErrorBoundary extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true }
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children
    const retry = (): void => this.setState({ failed: false })
    return (
      <main className="missing" role="alert">
        <p>{t('Something went wrong while drawing this block. Undo the last change, or start with an empty grid: your block stays in My blocks.')}</p>
        <div className="buttons">
          <button
            type="button"
            disabled={openDocument(getState()).past.length === 0}
            onClick={() => {
              undo()
              retry()
            }}
          >
            {t('Undo')}
          </button>
          <button type="button" onClick={() => void beginBlock(STARTERS.empty).then(retry)}>
            {t('Start with an empty grid')}
          </button>
          <button type="button" onClick={() => saveFile(openDocument(getState()).block)}>
            {t('Save as a file')}
          </button>
          <button type="button" onClick={() => window.location.reload()}>
            {t('Reload the page')}
          </button>
        </div>
      </main>
    )
  }
}
