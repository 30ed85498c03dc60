/**
 * What comes a moment later than the page.
 *
 * In      a part that is fetched when it is first shown, and what stands there meanwhile.
 * Out     the part; where it does not come, one sentence in its place, so that the board and all else go on.
 */
import { Component, type ReactNode, Suspense } from 'react'
import { t } from '../words/words.ts'

interface Props {
  readonly children: ReactNode
  readonly meanwhile?: ReactNode
}

/** A class, because only one can hear that a part below it failed. */
export class LazyPanel extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true }
  }

  override render(): ReactNode {
    if (!this.state.failed) return <Suspense fallback={this.props.meanwhile}>{this.props.children}</Suspense>
    return (
      <div className="missing" role="alert">
        <p>{t('This part of the page did not come. Load the page anew as soon as you are connected; what is kept in this browser stays.')}</p>
        <button type="button" onClick={() => window.location.reload()}>
          {t('Load the page anew')}
        </button>
      </div>
    )
  }
}
