/** For a block that came out differently: the planned layout is kept, the board shows what was really sewn, and the panel lists the moves back. */
import { lazy } from 'react'
import { setComparedLayout, setView, useFindings, useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'

const SewnDifferences = lazy(async () => ({ default: (await import('./SewnDifferences.tsx')).SewnDifferences }))

export function SewnComparison() {
  const layout = useStore((state) => state.comparedLayout)
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  // Nobody has sewn a block that cannot be sewn yet.
  if (layout === null && (report === null || report.joins.length === 0)) return null
  return (
    <section aria-labelledby="sewn-title">
      <h2 id="sewn-title">{t('My block looks different')}</h2>
      {layout === null ? (
        <>
          <p className="hint">
            {t(
              'Did your block turn out differently? Save this layout as the plan. Then turn and swap units on the board until it looks like what you sewed.',
            )}
          </p>
          <div className="buttons">
            <button
              type="button"
              onClick={() => {
                setComparedLayout(block)
                setView({ notice: t('Plan saved. Now make the board look like what you sewed.') })
              }}
            >
              {t('Save this as the plan')}
            </button>
          </div>
        </>
      ) : (
        <LazyPanel>
          <SewnDifferences laid={layout} />
        </LazyPanel>
      )}
    </section>
  )
}
