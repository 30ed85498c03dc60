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
  'later-word': 'you asked for something else later',
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
  `Matching units are pressed the same way. That leaves ${choices === 1 ? 'one choice' : `${choices} choices`}.`

function chainWords({ joins, length, settled, clashes }: ClashingChain): string {
  const named = joins.length === length ? `Seams ${joins.join(', ')}` : `${length} seams from ${joins[0]} on`
  const cause = settled > 0 ? `you or the method have fixed ${settled} of them` : 'they run in a ring, and the ring doesn’t come out even'
  return `${named} depend on each other: ${cause}. So at least ${clashes === 1 ? 'one crossing' : `${clashes} crossings`} can’t nest`
}

export const boardEnglish: Words<BoardCode> = {
  unit: ({ place }) => unitInEnglish(place),
  'unit-label': ({ place }) => unitLabelInEnglish(place),

  'place-units': ({ units }) => (units === 1 ? 'place a unit' : 'place units'),
  'swap-units': 'swap two units',
  'align-units': 'align units',
  'spread-units': 'spread units evenly',
  'resize-units': ({ units }) => (units === 1 ? 'resize a unit' : 'resize units'),
  'replace-units': ({ units }) => (units === 1 ? 'replace a unit' : 'replace units'),
  'move-units': ({ units }) => (units === 1 ? 'move a unit' : 'move units'),
  'copy-units': ({ units }) => (units === 1 ? 'copy a unit' : 'copy units'),
  'remove-units': ({ units }) => (units === 1 ? 'delete a unit' : 'delete units'),
  'turn-units': ({ units }) => (units === 1 ? 'turn a unit' : 'turn units'),
  'turn-units-half-round': 'turn units 180°',
  'mirror-units': ({ units }) => (units === 1 ? 'flip a unit' : 'flip units'),
  'paste-units': ({ units }) => (units === 1 ? 'paste a unit' : 'paste units'),
  'turn-block': 'turn the block',
  'mirror-block': 'flip the block',
  'join-shapes': 'join shapes',
  'cut-shapes': 'cut out shapes',
  'recolour-patches': ({ patches }) => (patches === 1 ? 'recolour a patch' : 'recolour patches'),
  'recolour-wings': 'colour the wings of geese',
  'recolour-fabric-everywhere': 'recolour a fabric everywhere',
  'add-fabrics': ({ fabrics }) => (fabrics === 1 ? 'add a fabric' : 'add fabrics'),
  'change-fabric': 'change a fabric',
  'remove-fabric': 'delete a fabric',
  'move-fabric-up': 'move a fabric up',
  'move-fabric-down': 'move a fabric down',
  'swap-fabrics': 'swap two fabrics',
  'make-fabric-plain': 'make a fabric plain',
  'choose-print': 'choose a print',
  'recolour-print': 'colour a print',
  'set-print-direction': 'set the print direction',
  'recolour-fabrics': 'recolour the fabrics',
  'take-colouring': 'use a colouring',
  'recolour-alike-patches': 'recolour matching patches',
  'set-method': 'choose a method',
  'set-methods': 'choose methods',
  'cut-as-needed': 'no extra for trimming',
  'cut-larger': 'add extra for trimming',
  'set-order': 'choose the sewing order',
  'name-block': 'name the block',
  'set-measure': 'change the unit of measure',
  'set-strip-count': ({ strips }) => `make ${strips} strips`,
  'separate-strips': 'separate strips',
  'set-seam': 'change the seam allowance',
  'set-finished-size': 'change the finished size',
  'set-grid': 'change the grid',
  'set-borders': 'change the borders',
  'set-cloth-width': 'change the width of fabric',
  'press-seam-open': 'press a seam open',
  'press-seam': 'press a seam your way',
  'press-as-proposed': ({ seams }) => (seams === 1 ? 'press a seam as proposed' : 'press seams as proposed'),
  'press-row': ({ line, number, way }) => `press ${line} ${number} ${PRESSED[way]}`,
  'forget-press': 'clear your pressing',
  'press-units-alike': 'press matching units the same way',
  'press-units-apart': 'press each unit on its own',
  'lift-press-rule': 'press a unit your way',
  'keep-press-rule': 'press a unit the method’s way',
  'press-unit-open': 'press a unit’s seams open',
  'press-unit-to-one-side': 'press a unit’s seams to one side',
  'set-quilting-start': 'start the quilting somewhere else',
  'set-fill': 'fill patches with quilting',
  'set-fill-spacing': 'change the distance between quilting lines',
  'title-booklet': 'title the booklet',
  'sign-booklet': 'add your name to the booklet',
  'introduce-booklet': 'write the introduction',
  'set-booklet-blocks': 'change how many blocks to make',
  'change-step-words': 'change the text of a step',
  'keep-step-words': 'keep the text of a step',
  'restore-step-words': 'restore the original text of a step',
  'note-step': 'add a note to a step',
  'add-step-photograph': 'add a photo to a step',
  'remove-step-photograph': 'delete a photo from a step',
  'drop-step-words': 'delete the text of a step that is gone',
  'begin-again': 'start again',
  'go-back-to-version': 'go back to a version',
  'go-back-to-layout': 'go back to the plan',

  'cloth-missing': 'This space is empty. Fill it.',
  'units-overlap': 'These pieces overlap. Move one of them.',
  'cloth-outside': 'This piece is outside the grid. Move it in, or make the grid larger.',
  'hourglass-pairs-differ':
    'Hourglasses made two at a time need the same two fabrics on both sides of the long seam. Recolour it, or use traditional piecing.',
  'strip-set-too-long': 'These strips are longer than the fabric is wide. Cut them one by one: use traditional piecing.',
  'hourglass-hands': ({ most, all }) =>
    `Two squares make one hourglass and its mirror image. Here ${most} of ${all} are the same way round. Rotate or flip some of them, or their long seams will run the other way.`,
  'bias-at-edge': 'These triangles have bias edges on the outside of the block. Handle them gently, or add a border.',
  'not-trimmed': ({ method }) =>
    `${method === 'corner-flip' ? 'Stitch-and-flip units' : method === 'strip-set' ? 'Units from a strip set' : 'Units made by traditional piecing'} aren’t trimmed, so no extra is added.`,
  'grain-at-edge': 'These free patches have one edge on the outside of the block. Cut that edge along the grain, so it doesn’t stretch.',
  'print-turned': ({ fabrics, how, units, of, named }) => {
    const where = units < of ? `${units} of ${of} units` : units === 1 ? 'this unit' : 'these units'
    return `The print of ${fabrics.join(' and ')} will be ${how === 'slanting' ? 'on the slant' : 'turned'} in ${where}${named.length === 0 ? '' : ` (${named.map(unitInEnglish).join(', ')})`}.`
  },
  'print-turned-to-fit': ({ fabric, size: [across, along], measure }) =>
    `A piece of ${fabric}, ${sayLength(across, measure)} × ${sayLength(along, measure)} ${measure}, is longer than the fabric is wide. Cut it along the length of the fabric: its print will be turned a quarter.`,
  'piece-too-large': ({ fabric, size }) =>
    `A piece of ${fabric}, ${size[0]} × ${size[1]}, is too large for the fabric. Divide it, or use wider fabric.`,
  'seam-partial': 'This is a partial seam: sew part of it now, and finish it once its neighbours are on.',
  'seam-set-in': 'This is a set-in seam: stop at the corner with the needle down, and turn.',
  'press-not-kept': ({ reason }) => `Your pressing here wasn’t used: ${NOT_KEPT[reason]}.`,
  'press-alike-differs': 'Matching units should be pressed the same way, but these are fixed in different ways. Each keeps its own.',
  'method-needs-pairs': 'It needs the same two fabrics on both sides of the long seam.',
  'method-strips-too-long': 'The strips are longer than the fabric is wide.',
  'not-worked-out': ({ error }) => `Something went wrong with this layout (${error}). Undo your last change.`,
  'findings-follow': 'Working… This is a large block; you can carry on meanwhile.',
  'program-error': ({ error }) => error,

  'asked-for-seam': 'You asked for this.',
  'asked-for-unit': 'You asked to press this unit’s seams open.',
  'geese-rule': 'Geese made four at a time are pressed toward the wings.',
  'corner-rule': 'Stitch-and-flip corners are pressed toward the corner.',
  'less-bulk': 'Toward the side with fewer seams, to cut bulk.',
  'darker-side': 'Toward the darker fabric.',
  'both-sides-alike': 'Either way: both sides are the same.',
  'like-alike-units': 'The same as matching units.',
  'so-that-it-nests': 'So the seams nest.',
  'either-way': 'Either way is fine.',

  'nothing-sewn': 'Fill the gaps and fix the overlaps first.',
  'all-nest': 'All seam crossings nest: nothing to fix.',
  'chains-must-clash': ({ chains }) => `${chains.map(chainWords).join('. ')}. No other pressing does better with this sewing order.`,
  'alike-all-weighed': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} All were tried: at least ${atLeast === 1 ? 'one crossing' : `${atLeast} crossings`} can’t nest.`,
  'alike-best-found': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} That’s too many to try them all. This is the best found; at least ${atLeast === 1 ? 'one crossing' : `${atLeast} crossings`} can’t nest.`,

  'lift-rule': ({ unit }) => `Press ${unitInEnglish(unit)} the other way.`,
  'press-other-way': 'Press this seam the other way.',
  'press-open': 'Press this seam open.',
  'join-by-order': ({ order, all }) => `Sew by ${order}: then ${all ? 'all crossings nest' : 'this crossing nests'}.`,
  'sew-turned': ({ unit }) => `Turn ${unitInEnglish(unit)}: it looks the same, but its seams run the other way.`,
  'sew-mirrored': ({ unit }) => `Flip ${unitInEnglish(unit)}: it looks the same, but its seams run the other way.`,
}
