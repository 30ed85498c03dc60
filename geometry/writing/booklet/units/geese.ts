/**
 * Geese made four at a time, action by action.
 *
 * In      a row of the report, its variants, and the booklet context.
 * Out     what each set takes and makes, by the letters of the layout, and what is spare; then one picture beside each thing to do.
 * Source  four at a time [S3][S5][S6].
 */
import { wingsSeen } from '../../../cutting/batches/geeseBatches.ts'
import { geeseMade } from '../../../cutting/batches/geeseMade.ts'
import type { UnitRow } from '../../../values/report.ts'
import type { BookletContext, UnitVariant } from '../bookletContext.ts'
import type { StepAction } from '../values.ts'
import { cutSize } from './cutSizes.ts'
import { fourGeese, type GooseSet, halvesApart, hearts, piecesApart, twoOnLarge } from './geesePictures.ts'

type Wings = readonly [string, string]

export function geeseActions(row: UnitRow, variants: readonly UnitVariant[], context: BookletContext): StepAction[] {
  const { say, seamText } = context
  const words = say.units
  const [large, small] = [cutSize(context, row), cutSize(context, row, 'smallest')]
  const sets = row.batches.map(({ goose, corners }): GooseSet => ({ large, small, goose, corners }))
  const [set] = sets
  if (set === undefined) return []
  const act = (sentences: readonly string[], ...drawings: StepAction['drawings'][number][]): StepAction => ({ sentences, drawings })
  return [
    act([
      words.geeseSets({ sets: sets.length, geese: row.count, spare: row.spare }),
      ...setSentences(row, variants, context),
      words.drawOnSmallSquares,
    ]),
    act([words.layTwoSquares], twoOnLarge(set, false, context)),
    act([words.sewBesideLine(seamText)], twoOnLarge(set, true, context)),
    act([words.cutOnLine], halvesApart(set, context)),
    act([words.pressHearts], hearts(set, 'pressed', context)),
    act([words.laySquareOnHalf], hearts(set, 'laid', context)),
    act([words.sewBesideLine(seamText)], hearts(set, 'sewn', context)),
    act([words.cutOnLine], piecesApart(set, context)),
    ...looksOfSets(row, variants, context),
  ]
}

/** `Set 1: take …. It makes 1 B1 and 3 B2.` Sets that take the same are said once. */
function setSentences(row: UnitRow, variants: readonly UnitVariant[], context: BookletContext): string[] {
  const words = context.say.units
  const several = row.batches.length > 1
  const said = row.batches.map((batch, index) => {
    const fabrics = [...new Set(batch.corners)]
    const squares = fabrics.map((id) => ({
      fabric: context.fabric(id),
      numbers: batch.corners.flatMap((corner, at) => (corner === id ? [at + 1] : [])),
    }))
    const take = words.takeSet({ set: several ? index + 1 : null, goose: context.fabric(batch.goose), squares })
    return `${take} ${words.setMakes(geeseMade([batch], []).map(({ wings, made }) => gooseSaid(wings, made, variants, context)))}`
  })
  const spare = geeseMade(row.batches, neededOf(row, context)).filter((one) => one.spare > 0)
  return [...said, ...(spare.length === 0 ? [] : [words.spareGeese(spare.map((one) => gooseSaid(one.wings, one.spare, variants, context)))])]
}

/** The wings of all geese of a row, of every block. */
function neededOf({ for: ids }: UnitRow, { block }: BookletContext): Wings[] {
  const units = new Map(block.units.map((unit) => [unit.id, unit]))
  return ids.flatMap((id) => {
    const unit = units.get(id)
    return unit === undefined ? [] : [wingsSeen(unit)]
  })
}

const variantWith = ([left, right]: Wings, variants: readonly UnitVariant[]): UnitVariant | undefined =>
  variants.find(({ first }) => {
    const [one, other] = wingsSeen(first)
    return one === left && other === right
  })

const gooseSaid = (wings: Wings, count: number, variants: readonly UnitVariant[], context: BookletContext) => ({
  count,
  label: variantWith(wings, variants)?.label ?? null,
  left: context.fabric(wings[0]),
  right: context.fabric(wings[1]),
})

/** The four geese of each different set, with their letters; those of one look only where there are several sets or looks. */
function looksOfSets(row: UnitRow, variants: readonly UnitVariant[], context: BookletContext): StepAction[] {
  const words = context.say.units
  const different = [...new Map(row.batches.map((batch, index) => [batch.corners.join(), { batch, index }])).values()]
  return different.map(({ batch, index }, place) => {
    const geese = batch.makes.map((wings) => {
      const known = variantWith(wings, variants)
      const [left, right] = wings
      const plain = variants[0] as UnitVariant
      const first = { ...plain.first, mirror: false, fabrics: { ...plain.first.fabrics, leftWing: left, rightWing: right } } as UnitVariant['first']
      return { variant: { ...plain, first }, label: known?.label ?? '' }
    })
    const made = words.madeBySet(row.batches.length > 1 ? index + 1 : null)
    return { sentences: place === 0 ? [words.pressGeese, made] : [made], drawings: [fourGeese(geese, context)] }
  })
}
