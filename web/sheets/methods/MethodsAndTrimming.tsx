/** A foldout of the selected units: the methods to make them, how much larger to cut, and how to trim. */
import { t } from '../../words/words.ts'
import { MethodComparison } from './MethodComparison.tsx'
import { OversizeField, type UnitProps } from './OversizeField.tsx'
import { Trimming } from './Trimming.tsx'

export function MethodsAndTrimming({ unit, block, ids }: UnitProps) {
  return (
    <details className="order">
      <summary>{t('Compare methods and see how to trim')}</summary>
      <MethodComparison unit={unit} block={block} ids={ids} />
      <OversizeField unit={unit} block={block} ids={ids} />
      <Trimming unit={unit} block={block} />
    </details>
  )
}
