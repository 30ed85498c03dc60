/** The fabrics: take one in hand, pour it on a patch, change it, or put it in place of another everywhere. */
import { addFabric, changeFabric, freshId, recolourAll, recolourPatch, removeFabric } from '../../geometry/index.ts'
import { startPouring } from '../canvas/gestures.ts'
import { edit, look, now, useStore } from '../state/store.ts'

/** Colours for new fabrics, one after the other. */
const FRESH = ['#7f4f6b', '#4f8a8b', '#c9b458', '#8a5a3c', '#93a8ac', '#d98c7a'] as const

function take(id: string): void {
  const { patch, brush } = now().view
  if (patch !== null) {
    edit(recolourPatch(patch.unit, patch.name, id))
    look({ notice: 'The chosen patch is recoloured.' })
  } else
    look({ brush: brush === id ? null : id, notice: brush === id ? 'The fabric is put back.' : 'Fabric in hand: press patches to recolour them.' })
}

function add(): void {
  const { block } = now().history
  const id = freshId(block, 'fabric')
  edit(addFabric({ id, name: `Fabric ${block.fabrics.length + 1}`, colour: FRESH[block.fabrics.length % FRESH.length] as string }))
}

export function Fabrics() {
  const fabrics = useStore(({ history }) => history.block.fabrics)
  const brush = useStore(({ view }) => view.brush)
  return (
    <section aria-labelledby="fabrics-title">
      <h2 id="fabrics-title">Fabrics</h2>
      <ul className="fabrics">
        {fabrics.map(({ id, name, colour }) => (
          <li key={id}>
            <button
              type="button"
              className="swatch"
              style={{ background: colour }}
              aria-pressed={brush === id}
              aria-label={`Take ${name}`}
              onPointerDown={(event) => {
                event.currentTarget.releasePointerCapture?.(event.pointerId)
                startPouring(id, event)
              }}
              onClick={() => take(id)}
            />
            <input
              aria-label={`Name of ${name}`}
              value={name}
              maxLength={80}
              onChange={(event) => edit(changeFabric(id, { name: event.target.value }))}
            />
            <input
              type="color"
              aria-label={`Colour of ${name}`}
              value={colour}
              onChange={(event) => edit(changeFabric(id, { colour: event.target.value }))}
            />
            <details className="more">
              <summary aria-label={`More for ${name}`}>…</summary>
              <div>
                <label>
                  Use instead everywhere
                  <select value="" onChange={(event) => edit(recolourAll(id, event.target.value))}>
                    <option value="">choose a fabric</option>
                    {fabrics
                      .filter((other) => other.id !== id)
                      .map((other) => (
                        <option key={other.id} value={other.id}>
                          {other.name}
                        </option>
                      ))}
                  </select>
                </label>
                <button type="button" onClick={() => drop(id)}>
                  Remove from the list
                </button>
              </div>
            </details>
          </li>
        ))}
      </ul>
      <button type="button" onClick={add}>
        Add a fabric
      </button>
      <p className="hint">Press a fabric, then patches; or drag it onto a patch.</p>
    </section>
  )
}

function drop(id: string): void {
  const before = now().history.block
  edit(removeFabric(id))
  look({ notice: now().history.block === before ? 'Some patch is of this fabric; recolour it first.' : 'Fabric removed.' })
}
