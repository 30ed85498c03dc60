/** Carries out what the hand decided: on the store, with a notice of what was done. */
import { toDecimal } from '../../document/shapes.ts'
import { getState, setView, redo, showPreview, undo } from '../../document/store.ts'
import { nameOfUnit, patchName } from '../../words/unitWords.ts'
import { t, tn } from '../../words/words.ts'
import { moveTo, refuseSwap, resizeTo, swapPlaces } from '../actions/arrange.ts'
import { addCorner } from '../actions/drawPatch.ts'
import { recolourAt, recolourPatches } from '../actions/recolour.ts'
import { placeAround, placeAt, placeMany, replaceWith } from '../actions/units.ts'
import { runKeyCommand } from '../keys/runKeyCommand.ts'
import type { HandCommand } from './values.ts'

/** Those that need the page itself are left to the board. */
type StoreCommand = Exclude<HandCommand, { type: 'focusBoard' | 'showCursor' }>

type Actions = { readonly [T in StoreCommand['type']]: (command: Extract<StoreCommand, { type: T }>) => unknown }

const ACTIONS: Actions = {
  endPreview: () => showPreview(null),
  setView: ({ zoom, pan }) => setView({ zoom, pan }),
  undo: () => undo(),
  redo: () => redo(),
  select: ({ ids }) => setView({ selected: ids, patch: null }),
  selectArea: ({ ids }) => setView({ selected: ids, patch: null, notice: tn(ids.length, 'One unit selected.', '{n} units selected.') }),
  selectPatch: ({ ids, patch, add }) =>
    setView({
      selected: ids,
      patch: add ? null : patch,
      notice: t('{unit}, {patch}: selected.', { unit: nameOfUnit(getState().history.block, patch.unit), patch: patchName(patch.name) }),
    }),
  showMeeting: ({ index }) => {
    const finding = `meeting ${index}`
    setView({ finding, requestedFinding: finding, sheet: 'findings', notice: t('This crossing is shown in the seam check.') })
  },
  moveUnits: ({ ids, by }) => moveTo(ids, by),
  swapUnits: ({ one, other }) => swapPlaces(one, other),
  refuseSwap: () => refuseSwap(),
  resizeUnits: ({ ids, to }) => resizeTo(ids, to),
  recolourAt: ({ fabric, at }) => recolourAt(fabric, at),
  recolourPatches: ({ fabric, over }) => recolourPatches(fabric, over),
  placeUnits: ({ units }) => placeMany(units),
  placeUnit: ({ kind, at, turn, mirror }) => placeAt(kind, at, { turn, mirror, select: true }),
  placeAround: ({ kind, at }) => placeAround(kind, at),
  replaceUnit: ({ kind, unit }) => replaceWith(kind, [unit]),
  addCorner: ({ corner }) => {
    addCorner(corner)
    // The keyboard goes on from there; and where no mouse hovers, the next line starts there too.
    setView({ cursor: [Math.round(toDecimal(corner[0]) * 2) / 2, Math.round(toDecimal(corner[1]) * 2) / 2] })
  },
  selectSeam: ({ join }) => setView({ seam: join }),
  // Loaded when a seam is first pressed.
  pressSeam: async ({ join, choice }) => (await import('../actions/press.ts')).pressSeam(join, choice),
  key: ({ command }) => runKeyCommand(command),
}

export function runCommand(command: StoreCommand): void {
  const action = ACTIONS[command.type] as (command: StoreCommand) => unknown
  action(command)
}
