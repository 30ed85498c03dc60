/**
 * Holds a part of the page whose code is loaded when it is first shown.
 *
 * In      the lazy part, and what to show until it has loaded.
 * Out     the part. If it fails to load, a message takes its place, and the board and the rest of the page go on working.
 */
import { Component, type ReactNode, Suspense } from 'react'
import { t } from '../words/words.ts'

interface Props {
  readonly children: ReactNode
  readonly fallback?: ReactNode
}

/** A class, because React only tells class components that a child failed. */
export class LazyPanel extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true }
  }

  override render(): ReactNode {
    if (!this.state.failed) return <Suspense fallback={this.props.fallback}>{this.props.children}</Suspense>
    return (
      <div className="missing" role="alert">
        <p>{t('This part of the page didn’t load. Reload the page when you’re online again; your saved blocks are safe.')}</p>
        <button type="button" onClick={() => window.location.reload()}>
          {t('Reload the page')}
        </button>
      </div>
    )
  }
}
