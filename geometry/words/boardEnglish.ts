/** English for what is said beside a block on the board: its findings and the names of its edits. All the page needs at first. */
import { sayLength } from '../exact/lengths.ts'
import type { BoardCode, ClashingChain, PressNotKept, PressWay } from '../values/messages.ts'
import { unitInEnglish, unitLabelInEnglish } from './unitEnglish.ts'
import type { Words } from './words.ts'

const NOT_KEPT: Readonly<Record<PressNotKept, string>> = {
  'no-seam': 'no seam of this plan runs there',
  'several-seams': 'several seams meet there; give a point on one of them',
  'end-of-seam': 'that is the end of a seam; give a point between its ends',
  'neither-side': 'the point to press toward lies on neither side of the seam',
  'later-word': 'a later word of yours presses the same seam otherwise',
}

export const PRESSED: Readonly<Record<PressWay, string>> = {
  left: 'to the left',
  right: 'to the right',
  up: 'up',
  down: 'down',
  open: 'open',
  proposed: 'as proposed',
}

const alikeChoices = (choices: number): string =>
  `Alike units are pressed alike, so their seams turn together: ${choices === 1 ? 'one choice is' : `${choices} choices are`} left.`

function chainWords({ joins, length, settled, clashes }: ClashingChain): string {
  const named = joins.length === length ? `Seams ${joins.join(', ')}` : `${length} seams from ${joins[0]} on`
  const cause =
    settled > 0 ? `the ways of ${settled} of them are settled by their method or by you` : 'going once round, the turns do not come out even'
  return `${named} each decide the next: ${cause}, so at least ${clashes === 1 ? 'one clash' : `${clashes} clashes`} must stay`
}

export const boardEnglish: Words<BoardCode> = {
  unit: ({ place }) => unitInEnglish(place),
  'unit-label': ({ place }) => unitLabelInEnglish(place),

  'place-units': ({ units }) => (units === 1 ? 'place a unit' : 'lay a run of units'),
  'swap-units': 'change the places of two units',
  'align-units': 'align units',
  'spread-units': 'spread units evenly',
  'resize-units': ({ units }) => (units === 1 ? 'resize a unit' : 'resize units'),
  'replace-units': ({ units }) => (units === 1 ? 'put another unit in place' : 'put other units in place'),
  'move-units': ({ units }) => (units === 1 ? 'move a unit' : 'move units'),
  'copy-units': ({ units }) => (units === 1 ? 'copy a unit' : 'copy units'),
  'remove-units': ({ units }) => (units === 1 ? 'remove a unit' : 'remove units'),
  'turn-units': ({ units }) => (units === 1 ? 'turn a unit' : 'turn units'),
  'turn-units-half-round': 'turn units half round',
  'mirror-units': ({ units }) => (units === 1 ? 'mirror a unit' : 'mirror units'),
  'paste-units': ({ units }) => (units === 1 ? 'paste a unit' : 'paste units'),
  'turn-block': 'turn the block',
  'mirror-block': 'mirror the block',
  'join-shapes': 'join shapes',
  'cut-shapes': 'cut shapes away',
  'recolour-patches': ({ patches }) => (patches === 1 ? 'recolour a patch' : 'recolour patches'),
  'recolour-wings': 'colour the wings of geese',
  'recolour-fabric-everywhere': 'recolour every patch of a fabric',
  'add-fabrics': ({ fabrics }) => (fabrics === 1 ? 'add a fabric' : 'add fabrics'),
  'change-fabric': 'change a fabric',
  'remove-fabric': 'remove a fabric',
  'move-fabric-up': 'move a fabric up',
  'move-fabric-down': 'move a fabric down',
  'swap-fabrics': 'exchange two fabrics',
  'make-fabric-plain': 'make a fabric plain',
  'choose-print': 'choose a print',
  'recolour-print': 'colour a print',
  'set-print-direction': 'say how a cloth may be turned',
  'recolour-fabrics': 'recolour the fabrics',
  'take-colouring': 'take a colouring',
  'recolour-alike-patches': 'recolour alike patches',
  'set-method': 'choose a method',
  'set-methods': 'choose methods',
  'cut-as-needed': 'cut units as needed',
  'cut-larger': 'cut units a little larger',
  'set-order': 'choose the order of joining',
  'name-block': 'name the block',
  'set-measure': 'change the unit of measure',
  'set-seam': 'change the seam allowance',
  'set-finished-size': 'change the finished size',
  'set-grid': 'change the grid',
  'set-borders': 'change the borders',
  'set-cloth-width': 'change the width of the cloth',
  'press-seam-open': 'press a seam open',
  'press-seam': 'press a seam your way',
  'press-as-proposed': ({ seams }) => (seams === 1 ? 'press a seam as proposed' : 'press seams as proposed'),
  'press-row': ({ line, number, way }) => `press ${line} ${number} ${PRESSED[way]}`,
  'forget-press': 'forget how a seam was to be pressed',
  'press-units-alike': 'press alike units alike',
  'press-units-apart': 'press each unit by itself',
  'lift-press-rule': 'lift a method’s pressing rule',
  'keep-press-rule': 'keep a method’s pressing rule',
  'press-unit-open': 'press a unit’s seams open',
  'press-unit-to-one-side': 'press a unit’s seams to one side',
  'title-booklet': 'title the booklet',
  'sign-booklet': 'put a name on the booklet',
  'introduce-booklet': 'write the introduction',
  'change-step-words': 'change the words of a step',
  'keep-step-words': 'keep the words of a step',
  'restore-step-words': 'put a step back to the program’s words',
  'note-step': 'write a note on a step',
  'add-step-photograph': 'add a photograph to a step',
  'remove-step-photograph': 'take a photograph off a step',
  'drop-step-words': 'throw away the words of a step that is gone',
  'begin-again': 'begin anew',
  'go-back-to-version': 'go back to a version',
  'go-back-to-layout': 'go back to the layout',

  'cloth-missing': 'There is no cloth here; fill the gap.',
  'units-overlap': 'Units lie over each other here; move one of them.',
  'cloth-outside': 'Cloth lies beyond the grid here; move it in or make the grid larger.',
  'hourglass-pairs-differ':
    'Two-at-a-time hourglasses need the same pair of fabrics on both sides of the long seam; cut plain triangles, or recolour it.',
  'strip-set-too-long': 'These strips are longer than the cloth is wide; cut them one by one (plain).',
  'hourglass-hands': ({ most, all }) =>
    `Two squares make one hourglass of each hand; ${most} of ${all} are drawn with the same hand. Turn or mirror some of them, or expect their long seams to run the other way.`,
  'bias-at-edge': 'The outside edges of these triangles are on the bias and lie at the edge of the block: handle them gently, or add a border.',
  'not-trimmed': ({ method }) =>
    `What is sewn as cut (${method === 'corner-flip' ? 'flipped corners' : method === 'strip-set' ? 'a strip set' : 'single pieces'}) is not trimmed: it is not cut larger.`,
  'grain-at-edge':
    'These free patches have a side at the outside of the block and others on the slant: lay each template as the patch lies in the block, so that its outside edge runs along the grain.',
  'print-turned': ({ fabrics, how, units, of, named }) => {
    const where = units < of ? `${units} of ${of} units` : units === 1 ? 'this unit' : 'these units'
    return `The print of ${fabrics.join(' and ')} will lie ${how === 'slanting' ? 'on the slant' : 'turned round'} in ${where}${named.length === 0 ? '' : ` (${named.join(', ')})`}.`
  },
  'print-turned-to-fit': ({ fabric, size: [across, along], measure }) =>
    `The print of ${fabric} will lie turned a quarter in a piece of ${sayLength(across, measure)} by ${sayLength(along, measure)} ${measure}: it is wider than the cloth, and cut along its length.`,
  'piece-too-large': ({ fabric, size }) =>
    `A piece of ${fabric}, ${size[0]} by ${size[1]}, is wider and longer than the cloth; divide it, or use wider cloth.`,
  'seam-partial': 'This seam is sewn only part of the way at first, and finished once its neighbours are on.',
  'seam-set-in': 'This seam bends: it is set in, stopping at the bend with the needle down.',
  'press-not-kept': ({ reason }) => `Your word on pressing here was passed over: ${NOT_KEPT[reason]}.`,
  'press-alike-differs': 'Alike units are to be pressed alike, but this seam and its likes are settled in different ways: each keeps its own.',
  'method-needs-pairs': 'It needs the same two fabrics on both sides of the long seam.',
  'method-strips-too-long': 'The strips are longer than the cloth is wide.',
  'not-worked-out': ({ error }) => `This layout could not be worked out (${error}); undo the last change.`,
  'findings-follow': 'The findings of so large a block are being worked out; go on meanwhile.',
  'program-error': ({ error }) => error,

  'asked-for-seam': 'You asked for this.',
  'asked-for-unit': 'You asked for this unit’s seams to be pressed open.',
  'geese-rule': 'Geese made four at a time are pressed toward their wings.',
  'corner-rule': 'A flipped corner is pressed toward the corner.',
  'less-bulk': 'Away from the side with more seams, so that less cloth piles up.',
  'darker-side': 'Toward the darker fabric.',
  'both-sides-alike': 'Either way: both sides are alike.',
  'like-alike-units': 'Pressed like the other units that are alike.',
  'so-that-it-nests': 'So that it nests where it meets other seams.',
  'either-way': 'Either way will do.',

  'nothing-sewn': 'Nothing is sewn while the layout has gaps or overlaps.',
  'all-nest': 'Every pair of seams that meet nests, so there is nothing to lower.',
  'chains-must-clash': ({ chains }) =>
    `${chains.map(chainWords).join('. ')}. All other seams are free of these, so no pressing of these joins has fewer.`,
  'alike-all-weighed': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} Each was weighed against every way those it meets may lie, and none was left out: no pressing has fewer than ${atLeast}.`,
  'alike-best-found': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} There are too many to weigh them all: this is the best found, and no pressing has fewer than ${atLeast}.`,

  'lift-rule': ({ unit }) => `Press the seams of ${unit} the other way where it helps: lift the rule of its method.`,
  'press-other-way': 'Press this seam the other way.',
  'press-open': 'Press this seam open.',
  'join-by-order': ({ order, all }) => `Join by ${order}: then ${all ? 'every meeting nests' : 'this meeting does not clash'}.`,
  'sew-turned': ({ unit }) => `Sew ${unit} turned: the picture stays, its seams run the other way.`,
  'sew-mirrored': ({ unit }) => `Sew ${unit} as its mirror image: the picture stays, its seams run the other way.`,
}
