/** The block among copies of itself: how they are turned and pressed, where they clash, and the choice that clashes least. */
import { useEffect, useMemo, useRef, useState } from 'react'
import { type Block, PRESSINGS, type SettingAsk, type SettingReport, TURNINGS } from '../../geometry/index.ts'
import { bordersAround, type Piece, piecesOf, spot } from '../canvas/shapes.ts'
import { asker } from '../state/deep.ts'
import { Count } from './Count.tsx'
import { useStore, useTold } from '../state/store.ts'

const TURN_NAMES: Readonly<Record<SettingAsk['turn'], string>> = {
  none: 'all the same way',
  alternate: 'every other one a quarter',
  free: 'as nests best',
}
const PRESS_NAMES: Readonly<Record<SettingAsk['press'], string>> = {
  same: 'all alike',
  alternate: 'every other one opposite',
  free: 'as nests best',
}
const ACROSS = [1, 2, 3, 4, 5, 6, 7, 8]

type Said = { readonly report: SettingReport; readonly trouble: null } | { readonly report: null; readonly trouble: string }

export function Neighbours() {
  const block = useStore(({ history }) => history.block)
  const { report } = useTold()
  const [open, setOpen] = useState(false)
  const [wish, setWish] = useState<SettingAsk>({ columns: 3, rows: 3, turn: 'none', press: 'same' })
  const [said, setSaid] = useState<Said | null>(null)
  const ask = useMemo(asker, [])
  useEffect(() => {
    if (!open) return
    ask({ sort: 'setting', block, ask: wish }, (answer) => {
      if (answer.sort === 'trouble') setSaid({ report: null, trouble: `The setting could not be worked out: ${answer.message}.` })
      if (answer.sort === 'setting')
        setSaid(answer.value.ok ? { report: answer.value.value, trouble: null } : { report: null, trouble: `${sentence(answer.value.message)}.` })
    })
  }, [open, block, wish, ask])
  const pieces = useMemo(() => (report === null ? [] : piecesOf(report.patches)), [report])
  const set = (change: Partial<SettingAsk>): void => setWish((before) => ({ ...before, ...change }))
  return (
    <section aria-labelledby="neighbours-title">
      <h2 id="neighbours-title">Beside its neighbours</h2>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Set copies edge to edge</summary>
        <div className="pairs">
          <Count choices={ACROSS} label="Across" value={wish.columns} take={(columns) => set({ columns })} />
          <Count choices={ACROSS} label="Down" value={wish.rows} take={(rows) => set({ rows })} />
          <label>
            Turned
            <select value={wish.turn} onChange={(event) => set({ turn: event.target.value as SettingAsk['turn'] })}>
              {TURNINGS.map((turn) => (
                <option key={turn} value={turn}>
                  {TURN_NAMES[turn]}
                </option>
              ))}
            </select>
          </label>
          <label>
            Pressed
            <select value={wish.press} onChange={(event) => set({ press: event.target.value as SettingAsk['press'] })}>
              {PRESSINGS.map((press) => (
                <option key={press} value={press}>
                  {PRESS_NAMES[press]}
                </option>
              ))}
            </select>
          </label>
        </div>
        {said?.trouble != null && <p className="trouble">{said.trouble}</p>}
        {said?.report != null && <Shown said={said.report} block={block} pieces={pieces} />}
        {open && said === null && <p className="hint">Being worked out…</p>}
      </details>
    </section>
  )
}

const sentence = (message: string): string => message.charAt(0).toUpperCase() + message.slice(1)

function Shown({ said, block, pieces }: { readonly said: SettingReport; readonly block: Block; readonly pieces: readonly Piece[] }) {
  const { clashes, problems, why } = said
  if (problems.length > 0) return <p className="trouble">Mend the layout first: it cannot be sewn as it stands.</p>
  const opposite = said.places.filter(({ press }) => press === 'opposite').length
  return (
    <>
      <SettingPicture said={said} block={block} pieces={pieces} />
      <p className="sum" data-testid="setting-sum">
        {clashes.between === 0
          ? 'Nothing clashes between blocks.'
          : `${clashes.between} ${clashes.between === 1 ? 'clash' : 'clashes'} between blocks.`}
      </p>
      {opposite > 0 && (
        <p className="hint">
          {opposite === 1 ? 'The block marked with a bar is' : `The ${opposite} blocks marked with a bar are`} pressed the opposite way.
        </p>
      )}
      {why.slice(1).map((reason) => (
        <p className="hint" key={reason}>
          {reason}
        </p>
      ))}
    </>
  )
}

/** Pixels the picture is wide at the most. */
const WIDE = 312

function SettingPicture({ said, block, pieces }: { readonly said: SettingReport; readonly block: Block; readonly pieces: readonly Piece[] }) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const out = bordersAround(block)
  const [wide, high] = [block.grid.columns + 2 * out, block.grid.rows + 2 * out]
  const scale = Math.min(WIDE / (wide * said.columns), WIDE / (high * said.rows))
  const [width, height] = [Math.round(wide * said.columns * scale), Math.round(high * said.rows * scale)]
  useEffect(() => {
    const pen = canvas.current?.getContext('2d')
    if (pen == null) return
    const dense = window.devicePixelRatio || 1
    ;(canvas.current as HTMLCanvasElement).width = width * dense
    ;(canvas.current as HTMLCanvasElement).height = height * dense
    const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
    const paths = new Map<string, Path2D>()
    for (const { fabric, corners } of pieces) {
      const path = paths.get(fabric) ?? new Path2D()
      corners.forEach(([x, y], index) => {
        if (index === 0) path.moveTo(x, y)
        else path.lineTo(x, y)
      })
      path.closePath()
      paths.set(fabric, path)
    }
    for (const { at, turn, press } of said.places) {
      pen.setTransform(scale * dense, 0, 0, scale * dense, (at[0] + 0.5) * wide * scale * dense, (at[1] + 0.5) * high * scale * dense)
      pen.rotate((turn * Math.PI) / 2)
      pen.translate(-block.grid.columns / 2, -block.grid.rows / 2)
      for (const [fabric, path] of paths) {
        pen.fillStyle = colours.get(fabric) ?? '#888888'
        pen.fill(path)
      }
      if (press === 'own') continue
      pen.setTransform(dense, 0, 0, dense, 0, 0)
      pen.fillStyle = '#2b2320'
      pen.strokeStyle = '#fffaf2'
      pen.lineWidth = 2
      const [x, y] = [(at[0] + 0.5) * wide * scale, (at[1] + 0.5) * high * scale]
      pen.strokeRect(x - 8, y - 3, 16, 6)
      pen.fillRect(x - 8, y - 3, 16, 6)
    }
    pen.setTransform(dense, 0, 0, dense, 0, 0)
    pen.strokeStyle = '#fffaf2'
    pen.lineWidth = 1
    for (let column = 1; column < said.columns; column++) stroke(pen, column * wide * scale, 0, column * wide * scale, height)
    for (let row = 1; row < said.rows; row++) stroke(pen, 0, row * high * scale, width, row * high * scale)
    for (const { at, verdict } of said.meetings) {
      if (verdict !== 'clashes') continue
      const [x, y] = spot(at)
      cross(pen, x * scale, y * scale)
    }
  }, [said, block, pieces, wide, high, scale, width, height])
  const words = `${said.columns} by ${said.rows} copies of ${said.block}, ${said.clashes.between} clashes marked with crosses`
  return <canvas ref={canvas} className="setting" role="img" aria-label={words} style={{ width, height }} />
}

function stroke(pen: CanvasRenderingContext2D, x0: number, y0: number, x1: number, y1: number): void {
  pen.beginPath()
  pen.moveTo(x0, y0)
  pen.lineTo(x1, y1)
  pen.stroke()
}

/** A red cross on a pale ground, to be seen on any cloth. */
function cross(pen: CanvasRenderingContext2D, x: number, y: number): void {
  for (const [colour, width] of [
    ['#fffaf2', 5],
    ['#c22f3d', 2.4],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    stroke(pen, x - 4, y - 4, x + 4, y + 4)
    stroke(pen, x + 4, y - 4, x - 4, y + 4)
  }
}
