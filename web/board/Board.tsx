/**
 * The board: the block under the maker's hand.
 *
 * Pointer   press and drag a unit to move it (Alt: half cells), onto another of its size to change their places; drag over empty cells to choose, or to
 *           lay a run of the unit in hand; two fingers or the wheel to zoom; Space or the middle button to pan. A press on a patch recolours it while a
 *           fabric is in hand, else chooses it. What a drag means is in `hand.ts`.
 * Keys      in `keys.ts`; everything that a pointer does, keys do.
 */
import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import {
  type Block,
  canBecome,
  type Edit,
  type Findings,
  type Layered,
  moveUnits,
  placeUnit,
  placeUnits,
  type Repeat,
  resizeUnits,
  swapUnits,
  toFile,
  type Turn,
  type Unit,
} from '../../geometry/index.ts'
import { patchName } from '../words/unitWords.ts'
import { editResult } from '../document/editResult.ts'
import { symmetricEdit } from '../document/symmetricEdit.ts'
import { setView, getState, redo, showPreview, undo, useStore, useFindings } from '../document/store.ts'
import { t, tn } from '../words/words.ts'
import {
  layFabric,
  layRun,
  mirrorChosen,
  moveTo,
  placeAt,
  pourAt,
  pourOver,
  pressDown,
  quartersOf,
  replaceWith,
  resizeTo,
  sayNoSwap,
  swap,
  turnBy,
  withoutImages,
} from './actions/actions.ts'
import { BoardStrip } from './BoardTools.tsx'
import { cellId, Cells } from './CellGrid.tsx'
import { hearClipboard } from './actions/clipboard.ts'
import { clothPainting } from './layers/fabricLayer.ts'
import { addCorner } from './actions/drawPatch.ts'
import { fits, getReady, pieceAt, unitById, unitsById } from './hitTest.ts'
import { another, lifted, pinched, pinchOf, viewOf } from './hand/pinch.ts'
import { dropWith, type Held as HeldThing, useHeld } from './hand/trayDrag.ts'
import {
  aroundOf,
  carried,
  chosenBy,
  cursorOver,
  followed,
  type Gesture,
  isCarried,
  landed,
  onHandle,
  pressed,
  resizing,
  type Scene,
  scaling,
  type Touch,
} from './hand/hand.ts'
import { type Carry, carryOf, drawHeld, type Ghost, handleAt, handlesOf } from './layers/dragOverlay.ts'
import { keyed } from './keys/keys.ts'
import { newUnit, sizeOfKind, type TrayKind } from './newUnit.ts'
import { clearMarks, drawMarks, meetingsIndex } from './layers/marksLayer.ts'
import { Overboard } from './SelectionBar.tsx'
import { FINGER_MARGINS, type Frame, frameOf } from './viewport.ts'
import { useDecodedPhotos } from '../drawing/fabricPattern.ts'
import { around, bordersAround, seamLines, decimal, unitShapes, rectOf, type Point, pointOf, tiedTo } from '../document/shapes.ts'
import { type Guide, snapPoint } from './hand/snapping.ts'
import { type Pen, type Sheets, sheetsIn } from './layers/stage.ts'
import { type Still, stillOn } from './layers/bitmapCache.ts'
import { createTileCache } from '../drawing/tiles.ts'
import { useInk } from '../drawing/useInk.ts'
import { useOutlines } from './layers/useOutlines.ts'
import { drawDifference } from '../views/nestingChanges.ts'
import { paint } from '../drawing/paint.ts'
import { drawPreview } from '../views/fixPreview.ts'
import { useDifference } from '../views/useNestingChanges.ts'
import { useSheets } from '../views/useWrongSide.ts'

/** Milliseconds of rest before what a press asks is made ready. */
const READY = 100
const [LEAST_ZOOM, MOST_ZOOM] = [0.3, 24]
/** What a device can be touched with does not change while the page is open; what touches it may, and the block must not move then. */
const margins = window.matchMedia('(any-pointer: coarse)').matches ? FINGER_MARGINS : undefined
const NO_CELLS: Layered['cells'] = []

/** `children` lie over its lower edge: what the colours of a look mean. */
export function Board({ children }: { readonly children?: ReactNode }) {
  const place = useRef<HTMLDivElement>(null)
  const [size, setSize] = useState<Point>([640, 560])
  const [taken, setTaken] = useState<{ readonly gesture: Gesture; readonly of: Block } | null>(null)
  const [focused, setFocused] = useState(false)
  // A finger needs larger handles than a mouse; what touched the board last decides.
  const [coarse, setCoarse] = useState(() => window.matchMedia('(pointer: coarse)').matches)
  const [hover, setHover] = useState<Touch | null>(null)
  const pointers = useRef(new Map<number, Point>())
  /** When the first finger came down. */
  const since = useRef(0)
  const space = useRef(false)
  const canvas = useRef<HTMLDivElement>(null)
  const sheets = useRef<Sheets | null>(null)
  const still = useRef<Still | null>(null)
  const whole = useRef<(pixels: number) => { frame: Frame; size: Point }>(() => ({ frame, size }))
  const tiles = useMemo(createTileCache, [])
  const own = useStore(({ history }) => history.block)
  const view = useStore(({ view }) => view)
  const told = useFindings()
  // What was undone, or came from elsewhere, under a hand that holds units: they may be gone, or lie elsewhere now. The hand is empty then.
  const gesture = taken !== null && (taken.of === own || !holdsUnits(taken.gesture)) ? taken.gesture : null
  const setGesture = (next: Gesture | null): void => setTaken(next === null ? null : { gesture: next, of: own })
  // What is only tried is looked at like the block itself; a hand on the board puts it away.
  const preview = useStore((state) => state.preview)
  const [block, report] = preview === null ? [own, told.report] : [preview.block, preview.report]
  const difference = useDifference()
  const held = useHeld()
  const { ink, paper, accent } = useInk()
  const borders = bordersAround(block)
  const extent = useMemo(
    () => ({ columns: block.grid.columns, rows: block.grid.rows, around: borders }),
    [block.grid.columns, block.grid.rows, borders],
  )
  const frame = useMemo(
    () => frameOf(extent, size[0], size[1], view.zoom, view.pan, view.mode === 'wrong', margins),
    [extent, size, view.zoom, view.pan, view.mode],
  )
  const rects = useMemo(() => unitsById(block, view.chosen).map(rectOf), [block, view.chosen])
  const handles = gesture === null && preview === null && view.tool === 'hand' ? handlesOf(frame, around(rects), coarse) : null
  const scene: Scene = {
    block,
    chosen: view.chosen,
    tool: view.tool,
    taking: view.taking as TrayKind | null,
    turned: view.turned,
    brush: view.brush,
    scale: frame.scale,
    pan: view.pan,
  }
  const faults = useOutlines(report, block.grid.columns, block.grid.rows)
  const deep = useStore((state) => state.layers)
  const stitching = useStore((state) => state.stitching)
  const cells = deep?.block === block ? deep.layered.cells : NO_CELLS
  const folds = useSheets(block, view.mode === 'wrong')
  const meetings = view.marks && view.mode !== 'layers' && view.mode !== 'quilting'

  whole.current = (pixels) => {
    const [wide, high] = [extent.columns + 2 * borders, extent.rows + 2 * borders]
    const most: Point = [(pixels * wide) / Math.max(wide, high), (pixels * high) / Math.max(wide, high)]
    return { frame: frameOf(extent, ...most, 1, [0, 0], view.mode === 'wrong'), size: most }
  }
  useLayoutEffect(() => {
    if (canvas.current === null) return
    const made = sheetsIn(canvas.current)
    sheets.current = made
    still.current = stillOn(made.cloth, (pixels) => whole.current(pixels))
    return () => {
      still.current?.close()
      made.close()
    }
  }, [])
  useLayoutEffect(() => sheets.current?.resize(size), [size])

  const zoom = useRef(zoomAt)
  zoom.current = zoomAt
  useEffect(() => {
    const element = place.current
    if (element === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      const next: Point = [Math.max(200, entry.contentRect.width), Math.max(200, entry.contentRect.height)]
      setSize((before) => (before[0] === next[0] && before[1] === next[1] ? before : next))
    })
    watch.observe(element)
    const wheel = (event: WheelEvent): void => {
      event.preventDefault()
      const box = element.getBoundingClientRect()
      zoom.current([event.clientX - box.left, event.clientY - box.top], Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0016)))
    }
    element.addEventListener('wheel', wheel, { passive: false })
    // The board alone follows a finger: else some browsers take its lifting for a throw, and the next press anywhere for stopping it; or send a mouse
    // after it, which takes the focus away from where the press has brought it.
    const still = (event: TouchEvent): void => {
      if (event.cancelable) event.preventDefault()
    }
    element.addEventListener('touchmove', still, { passive: false })
    element.addEventListener('touchend', still, { passive: false })
    return () => {
      watch.disconnect()
      element.removeEventListener('touchmove', still)
      element.removeEventListener('touchend', still)
      element.removeEventListener('wheel', wheel)
    }
  }, [])

  function at({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Point {
    const box = place.current?.getBoundingClientRect()
    return [clientX - (box?.left ?? 0), clientY - (box?.top ?? 0)]
  }

  function zoomAt([x, y]: Point, by: number): void {
    const { zoom, pan } = getState().view
    const next = Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, zoom * by))
    const [dx, dy] = [x - size[0] / 2 - pan[0], y - size[1] / 2 - pan[1]]
    const grown = next / zoom
    setView({ zoom: next, pan: [pan[0] + dx - dx * grown, pan[1] + dy - dy * grown] })
  }

  const under = (thing: HeldThing): Point => frame.toCells(...at({ clientX: thing.x, clientY: thing.y }))

  useEffect(() => {
    dropWith((thing) => {
      const box = place.current?.getBoundingClientRect()
      if (box === undefined || thing.x < box.left || thing.x > box.right || thing.y < box.top || thing.y > box.bottom) return false
      const over = replacedBy(thing)
      if (thing.sort === 'unit' && over !== null) replaceWith(thing.kind, [over.id])
      else if (thing.sort === 'unit')
        placeAt(thing.kind, landed(thing.kind, turnOf(thing.kind), under(thing), thing.half, scene).by, turnOf(thing.kind))
      else pourAt(thing.fabric, under(thing))
      return true
    })
  })

  /** As it was turned in the hand; another comes off the tray as it is. */
  const turnOf = (kind: TrayKind): Turn => (kind === view.taking ? view.turned : 0)

  const touchOf = (event: PointerEvent): Touch => {
    const spotAt = at(event)
    return {
      at: spotAt,
      cells: frame.toCells(...spotAt),
      half: event.altKey || view.halves,
      add: event.shiftKey || event.ctrlKey || event.metaKey || view.adding,
      by: event.pointerType,
    }
  }

  function press(event: PointerEvent<HTMLDivElement>): void {
    showPreview(null)
    const touch = touchOf(event)
    setCoarse(touch.by === 'touch')
    if (touch.by === 'touch') place.current?.focus({ preventScroll: true })
    pointers.current.set(event.pointerId, touch.at)
    place.current?.setPointerCapture(event.pointerId)
    if (pointers.current.size === 1) since.current = event.timeStamp
    if (pointers.current.size === 2) {
      const begun = gesture !== null && gesture.sort !== 'press' && gesture.sort !== 'handle'
      return setGesture(pinchOf(firstTwo(), begun ? null : since.current, view.zoom, view.pan))
    }
    if (pointers.current.size > 2) return setGesture(gesture?.sort === 'pinch' ? another(gesture) : null)
    if (event.button === 1 || space.current) return setGesture({ sort: 'pan', from: touch.at, pan: view.pan })
    if (event.button !== 0) return
    if (handles !== null && pressHandle(touch)) return
    setGesture(pressed(touch, scene))
    if (view.tool === 'patch') setHover(touch)
  }

  const firstTwo = (): [Point, Point] => [...pointers.current.values()].slice(0, 2) as [Point, Point]

  function pressHandle(touch: Touch): boolean {
    const on = handles === null ? null : handleAt(handles, touch.at)
    const started = on === null ? null : typeof on === 'string' ? onHandle(on, touch, view.chosen, block) : resizing(view.chosen, on, block, touch)
    if (started !== null) setGesture(started)
    return started !== null
  }

  function move(event: PointerEvent<HTMLDivElement>): void {
    const touch = touchOf(event)
    if (pointers.current.has(event.pointerId)) pointers.current.set(event.pointerId, touch.at)
    if (view.tool === 'patch') setHover(touch)
    if (gesture === null) return pointWith(touch)
    if (gesture.sort === 'pinch') {
      const next = pinched(gesture, firstTwo())
      if (next !== gesture) setGesture(next)
      return setView(viewOf(next, firstTwo(), [size[0] / 2, size[1] / 2], [LEAST_ZOOM, MOST_ZOOM]))
    }
    if (gesture.sort === 'pan')
      return setView({ pan: [gesture.pan[0] + touch.at[0] - gesture.from[0], gesture.pan[1] + touch.at[1] - gesture.from[1]] })
    if (gesture.sort !== 'press') return setGesture(followed(gesture, touch, scene))
    if (!isCarried(gesture.from, touch)) return
    const begun = carried(gesture, touch, scene)
    if (begun.sort === 'move') setView({ chosen: begun.ids, patch: null })
    setGesture(begun)
  }

  /** A mouse shows what a press would do. */
  function pointWith(touch: Touch): void {
    if (touch.by !== 'mouse' || place.current === null) return
    const on = handles === null ? null : handleAt(handles, touch.at)
    place.current.style.cursor = cursorOver(on, pieceAt(block, touch.cells)?.unit ?? null, scene)
  }

  function release(event: PointerEvent<HTMLDivElement>): void {
    pointers.current.delete(event.pointerId)
    const done = gesture
    setGesture(null)
    if (done === null || event.type === 'pointercancel') return
    if (done.sort === 'pinch') {
      const meant = lifted(done, event.timeStamp)
      if (meant !== null) (meant === 'undo' ? undo : redo)()
      return
    }
    if (done.sort === 'press') tap(done)
    else if (done.sort === 'move') dropMoved(done)
    else if (done.sort === 'resize') dropCorner(done)
    else if (done.sort === 'handle') letGoOfHandle(done)
    else if (done.sort === 'pour') layFabric(done.fabric, done.over)
    else if (done.sort === 'run') layRun(done.units)
    else if (done.sort === 'corner') layCorner(done.to)
    else if (done.sort === 'box' || done.sort === 'round') choose(chosenBy(done, scene))
  }

  function dropMoved({ ids, snapped, fits: free, swap: other, inTheWay }: Extract<Gesture, { sort: 'move' }>): void {
    if (free || (other === null && inTheWay === null)) moveTo(ids, snapped.by)
    else if (other !== null) swap(ids[0] as string, other)
    else sayNoSwap()
  }

  /** A corner that has not been drawn away was pressed for what lies under it. */
  function dropCorner({ ids, to, drawn, from }: Extract<Gesture, { sort: 'resize' }>): void {
    if (drawn) resizeTo(ids, to)
    else tap(pressed(from, scene) as Extract<Gesture, { sort: 'press' }>)
  }

  function letGoOfHandle({ does, ids, off, quarters }: Extract<Gesture, { sort: 'handle' }>): void {
    if (does === 'turn') turnBy(ids, off ? quarters : 1)
    else if (!off) mirrorChosen()
  }

  const choose = (chosen: readonly string[]): void =>
    setView({ chosen, patch: null, notice: tn(chosen.length, 'One unit is chosen.', '{n} units are chosen.') })

  function tap({ unit, name, from }: Extract<Gesture, { sort: 'press' }>): void {
    if (view.tool === 'patch') return layCorner(from)
    if (view.brush !== null && !from.add) return pourAt(view.brush, from.cells)
    const meeting = meetings && view.tool === 'hand' ? meetingAt(from.at) : -1
    if (meeting >= 0) {
      const finding = `meeting ${meeting}`
      return setView({ finding, sought: finding, sheet: 'findings', notice: t('The meeting is shown among the findings.') })
    }
    if (unit === null || name === null) {
      if (view.taking !== null) return void pressDown(view.taking as TrayKind, from.cells)
      return setView({ chosen: from.add ? view.chosen : [], patch: null })
    }
    const { add } = from
    const ids = add ? (view.chosen.includes(unit) ? view.chosen.filter((id) => id !== unit) : [...view.chosen, unit]) : [unit]
    setView({ chosen: ids, patch: add ? null : { unit, name }, notice: t('{unit}, {patch}: chosen.', { unit, patch: patchName(name) }) })
  }

  function layCorner(touch: Touch): void {
    const corner = cornerAt(touch)
    addCorner(corner)
    // The keyboard goes on from there; and where no mouse hovers, the next line begins there too.
    setView({ cursor: [Math.round(decimal(corner[0]) * 2) / 2, Math.round(decimal(corner[1]) * 2) / 2] })
    if (touch.by === 'touch') setHover(null)
  }

  /** Where a corner of a free patch comes to lie: on the grid, on another edge, or on the middle. */
  function cornerAt(touch: Touch): readonly [number | string, number | string] {
    const [x, y] = snapPoint(touch.cells, aroundOf(scene, touch.cells, touch.cells, new Set(), touch.half))
    return [toFile(x), toFile(y)]
  }

  function meetingAt(from: Point): number {
    if (report === null) return -1
    const [x, y] = frame.toCells(...from)
    const reach = 9 / frame.scale
    const [found] = meetingsIndex(report)
      .touching([x - reach, y - reach], [x + reach, y + reach])
      .slice(-1)
    return found === undefined ? -1 : report.meetings.indexOf(found.item)
  }

  const fromTray = trayUnit()
  /** What is moved or laid, made into paths once for each gesture. */
  const turning = gesture?.sort === 'handle' && gesture.off && gesture.quarters !== 0 ? gesture : null
  const movedIds = gesture?.sort === 'move' ? gesture.ids : (turning?.ids ?? null)
  const movedCarry = useMemo(
    () => (movedIds === null ? null : carryOf(unitsById(block, movedIds).flatMap((unit) => unitShapes(unit)))),
    [block, movedIds],
  )

  /** What the gesture would make of the block if the hand let go now. */
  function tried(): Edit | null {
    if (gesture?.sort === 'move')
      return gesture.swap === null ? moveUnits(gesture.ids, ...gesture.snapped.by) : swapUnits(gesture.ids[0] ?? '', gesture.swap)
    if (gesture?.sort === 'run') return placeUnits(withoutImages(gesture.units))
    if (gesture?.sort === 'pour') return pourOver(gesture.fabric, gesture.over)
    if (turning !== null) return quartersOf(turning.ids, turning.quarters)
    if (gesture?.sort === 'resize') return resizeUnits(gesture.ids, gesture.to)
    return fromTray === null || fromTray.over ? null : placeUnit(fromTray.unit)
  }

  /** A unit on its way from the tray: where it would lie, or which unit it would take the place of. */
  function trayUnit(): { readonly unit: Unit; readonly over: boolean; readonly guides: readonly Guide[] } | null {
    if (held?.sort !== 'unit') return null
    const over = replacedBy(held)
    if (over !== null) return { unit: newUnit(block, held.kind, over.kind === 'polygon' ? [0, 0] : over.at), over: true, guides: [] }
    const { by, guides } = landed(held.kind, turnOf(held.kind), under(held), held.half, scene)
    return { unit: newUnit(block, held.kind, by, turnOf(held.kind)), over: false, guides }
  }

  function ghosts(): readonly Ghost[] {
    if (gesture?.sort === 'move' && movedCarry !== null) return movedGhosts(gesture, movedCarry)
    if (gesture?.sort === 'run') return [{ carry: carryOf(withoutImages(gesture.units).flatMap((unit) => unitShapes(unit))), by: [0, 0], fits: true }]
    if (turning !== null) {
      const units = unitsById(editResult(block, quartersOf(turning.ids, turning.quarters)), turning.ids)
      const free = fits(block, units.map(rectOf), new Set(turning.ids), units)
      return [{ carry: carryOf(units.flatMap((unit) => unitShapes(unit))), by: [0, 0], fits: free }]
    }
    if (gesture?.sort === 'pour') {
      const poured = gesture.over.flatMap(({ unit, name }) => unitShapes(unitById(block, unit) as Unit).filter((piece) => piece.name === name))
      return [{ carry: carryOf(poured.map((piece) => ({ ...piece, fabric: gesture.fabric }))), by: [0, 0], fits: true }]
    }
    if (gesture?.sort === 'resize') {
      const scaled = scaling(gesture.box, gesture.to)
      const pieces = unitsById(block, gesture.ids).flatMap((unit) => unitShapes(unit))
      return [{ carry: carryOf(pieces.map((piece) => ({ ...piece, corners: piece.corners.map(scaled) }))), by: [0, 0], fits: gesture.fits }]
    }
    if (fromTray === null) return []
    const { unit, over } = fromTray
    return [{ carry: carryOf(unitShapes(unit)), by: [0, 0], fits: over || fits(block, [rectOf(unit)], new Set()) }]
  }

  function movedGhosts({ ids, snapped, fits: free, swap: other }: Extract<Gesture, { sort: 'move' }>, carry: Carry): readonly Ghost[] {
    const [own, there] = [unitById(block, ids[0] ?? ''), other === null ? undefined : unitById(block, other)]
    if (own === undefined || there === undefined) return [{ carry, by: [decimal(snapped.by[0]), decimal(snapped.by[1])], fits: free }]
    const [a, b] = [rectOf(own).at, rectOf(there).at]
    const by: Point = [b[0] - a[0], b[1] - a[1]]
    return [
      { carry: carryOf(unitShapes(there)), by: [-by[0], -by[1]], fits: true },
      { carry, by, fits: true },
    ]
  }

  /** The unit that what comes from the tray would take the place of: one of its size, where it has no room beside it. */
  function replacedBy(thing: HeldThing): Unit | null {
    if (thing.sort !== 'unit') return null
    const piece = pieceAt(block, frame.toCells(...at({ clientX: thing.x, clientY: thing.y })))
    const unit = piece?.unit == null ? undefined : unitById(block, piece.unit)
    if (unit === undefined || !canBecome(unit, thing.kind)) return null
    const [w, h] = rectOf(unit).size
    const size = sizeOfKind(thing.kind)
    return w === size[0] && h === size[1] ? unit : null
  }

  function key(event: KeyboardEvent<HTMLDivElement>): void {
    if (event.key === ' ' && view.tool !== 'patch') {
      space.current = true
      event.preventDefault()
      return
    }
    const forget = event.key === 'Escape' && gesture !== null
    const act = forget
      ? () => setGesture(null)
      : keyed(event, { zoomBy: (by) => zoomAt([size[0] / 2, size[1] / 2], by), mirrored: view.mode === 'wrong' })
    if (act === undefined) return
    event.preventDefault()
    act()
  }

  const pointed = pointedAt(view.finding, report)
  const ring = useMemo(() => view.shown ?? ringOf(view.finding, report), [view.shown, view.finding, report])
  const patch = useMemo(() => {
    const unit = view.patch === null ? undefined : unitById(block, view.patch.unit)
    return unit === undefined ? null : (unitShapes(unit).find(({ name }) => name === view.patch?.name)?.corners ?? null)
  }, [block, view.patch])

  const stitched = stitching?.block === block ? stitching : null
  const lying = useMemo(
    () => ({ block, report, mode: view.mode, cells, stitching: stitched, sheets: folds, ink, paper }),
    [block, report, view.mode, cells, stitched, folds, ink, paper],
  )
  const prints = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a photograph that has just been decoded is drawn anew
  const painting = useMemo(() => clothPainting(lying, tiles(block)), [lying, tiles, block, prints])
  useEffect(() => hearClipboard(place.current as HTMLDivElement), [])
  useEffect(() => still.current?.show(painting, frame, size), [painting, frame, size])
  useEffect(() => {
    const rest = setTimeout(() => getReady(block), READY)
    return () => clearTimeout(rest)
  }, [block])
  const numbers = meetings
  useEffect(() => {
    const sight = { scale: frame.scale, toPixels: frame.toPixels, ink, paper }
    sheets.current?.marks.show((pen) => {
      if (preview !== null) paint(pen, drawPreview(preview), sight)
      drawMarks(pen, report, { numbers, meetings }, faults, ring, frame, size, { ink, paper })
      if (preview === null && difference?.sewn === true) paint(pen, drawDifference(difference.found), sight)
    })
  }, [report, numbers, meetings, faults, ring, frame, size, ink, paper, preview, difference])
  const resting = gesture === null && held === null
  useEffect(() => {
    const drawing = view.tool === 'patch'
    const images = imagesOfTried(block, tried(), view.repeat)
    const held = {
      block,
      chosen: gesture?.sort === 'move' || gesture?.sort === 'resize' || turning !== null ? [] : rects,
      handles,
      ghosts: [...images.ghosts, ...ghosts()],
      left: [...(movedCarry === null ? [] : [movedCarry]), ...images.left],
      guides: gesture?.sort === 'move' && gesture.swap === null ? gesture.snapped.guides : (fromTray?.guides ?? []),
      drawn: gesture?.sort === 'box' ? { from: gesture.from.at, to: gesture.to.at } : null,
      round: gesture?.sort === 'round' ? gesture.points.map((touch) => touch.at) : [],
      corners: drawing ? view.corners.map(pointOf) : [],
      next: !drawing ? null : hover !== null ? pointOf(cornerAt(hover)) : focused ? view.cursor : null,
      cursor: focused && !drawing ? view.cursor : null,
      patch,
      finding: pointed,
      clear: resting ? (pen: Pen) => clearMarks(pen, report, { numbers, meetings }, frame, size, { ink, paper }) : null,
      mirrors: mirrorsOf(view.repeat, block.grid),
      ink,
      paper,
      accent,
    }
    sheets.current?.held.show((pen) => drawHeld(pen, held, frame))
  })

  return (
    <div className="bench">
      <BoardStrip />
      <Overboard />
      {children}
      <div
        ref={place}
        className={view.tool === 'patch' ? 'board drawing' : 'board'}
        data-part="board"
        role="application"
        aria-label={t('Board: {block}, {columns} by {rows} cells', { block: block.name, columns: block.grid.columns, rows: block.grid.rows })}
        aria-describedby="board-how"
        aria-activedescendant={cellId(view.cursor)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the board is worked with the keys listed below it
        tabIndex={0}
        onPointerDown={press}
        onPointerMove={move}
        onPointerUp={release}
        onPointerCancel={release}
        onPointerLeave={() => setHover(null)}
        onContextMenu={(event) => event.preventDefault()}
        onKeyDown={key}
        onKeyUp={(event) => {
          if (event.key === ' ') space.current = false
        }}
        onFocus={() => setFocused(true)}
        onBlur={() => setFocused(false)}
        data-folded={folds !== null}
        data-scale={frame.scale}
        data-origin={frame.toPixels(0, 0).join(',')}
      >
        <div ref={canvas} />
        <p id="board-how" className="unseen">
          {t('Arrows walk over the cells, Enter chooses. All keys are listed under Keys.')}
        </p>
        <Cells block={block} cursor={view.cursor} chosen={view.chosen} />
      </div>
    </div>
  )
}

const holdsUnits = ({ sort }: Gesture): boolean => sort === 'move' || sort === 'resize' || sort === 'run'

/** Units above which images are made when the hand lets go, and not shown before. */
const MOST_SHOWN = 1500

/** While edits repeat: the images as they would lie, and where they lie now. */
function imagesOfTried(block: Block, edit: Edit | null, repeat: Repeat): { readonly ghosts: readonly Ghost[]; readonly left: readonly Carry[] } {
  if (edit === null || repeat === 'off' || block.units.length > MOST_SHOWN) return { ghosts: [], left: [] }
  const own = editResult(block, edit)
  const all = editResult(block, symmetricEdit(block, edit, repeat))
  // What the edit itself makes is drawn by the hand; the rest of what changes are its images.
  const images = all.units.filter(({ id }) => unitById(own, id) === unitById(block, id) && unitById(all, id) !== unitById(block, id))
  const pieces = (units: readonly Unit[]): Carry => carryOf(units.flatMap((unit) => unitShapes(unit)))
  const room = images.every((unit) => fits(all, [rectOf(unit)], new Set([unit.id]), [unit]))
  const left = unitsById(
    block,
    images.map(({ id }) => id),
  )
  return { ghosts: [{ carry: pieces(images), by: [0, 0], fits: room }], left: left.length === 0 ? [] : [pieces(left)] }
}

/** Cells by which a line of symmetry runs on beyond the block. */
const BEYOND = 0.35

function mirrorsOf(repeat: Repeat, { columns, rows }: { readonly columns: number; readonly rows: number }): readonly (readonly [Point, Point])[] {
  const upright: readonly [Point, Point] = [
    [columns / 2, -BEYOND],
    [columns / 2, rows + BEYOND],
  ]
  const level: readonly [Point, Point] = [
    [-BEYOND, rows / 2],
    [columns + BEYOND, rows / 2],
  ]
  if (repeat === 'off') return []
  return repeat === 'leftRight' ? [upright] : repeat === 'topBottom' ? [level] : [upright, level]
}

/** The seams a clash is bound up with. */
function ringOf(finding: string | null, report: Findings | null): readonly (readonly Point[])[] {
  const [sort, index] = (finding ?? '').split(' ')
  if (report === null || sort !== 'meeting' || report.meetings[Number(index)]?.verdict !== 'clashes') return []
  const tied = new Set(tiedTo(report, Number(index)))
  return seamLines(report)
    .filter(({ join }) => tied.has(join.id))
    .map(({ points }) => points)
}

function pointedAt(finding: string | null, report: Findings | null): Point | null {
  if (finding === null || report === null) return null
  const [sort, index] = finding.split(' ')
  if (sort === 'bulk') return report.bulk === null ? null : [report.bulk.at[0], report.bulk.at[1]]
  const found = sort === 'meeting' ? report.meetings[Number(index)]?.at : sort === 'problem' ? report.problems[Number(index)]?.at : undefined
  if (found !== undefined) return pointOf(found)
  const join = sort === 'join' ? report.joins[Number(index)] : undefined
  return join === undefined ? null : [(decimal(join.from[0]) + decimal(join.to[0])) / 2, (decimal(join.from[1]) + decimal(join.to[1])) / 2]
}
