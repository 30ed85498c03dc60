/** The rounds of a frame, from the block outward: the finished width and the fabric of each; the last one may take what is left. */
import { type FrameRound, type Length, parseRational, type Quilt, rational } from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { sayFieldLength } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'

/** A length of a file, exact. */
export const exactOf = (length: Length) => parseRational(length) ?? rational(0)

interface FrameProps {
  readonly quilt: Quilt
  readonly rounds: readonly FrameRound[]
  readonly onChange: (rounds: readonly FrameRound[]) => void
}

export function FrameFields({ quilt, rounds, onChange }: FrameProps) {
  const { unit } = quilt.measure
  const change = (index: number, next: FrameRound): void => onChange(rounds.map((round, place) => (place === index ? next : round)))
  const fabric = quilt.fabrics[0]?.id
  return (
    <>
      {rounds.map((round, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a round is its place, counted from the block outward
        <div className="pairs" key={index}>
          <EntryField
            label={t('Round {n}, finished width ({unit})', { n: index + 1, unit })}
            value={round.finishedWidth === undefined ? t('what is left') : sayFieldLength(exactOf(round.finishedWidth), unit)}
            validate={(text) => (isRest(text) && index === rounds.length - 1 ? null : lengthProblem(text))}
            onCommit={(text) => {
              const { finishedWidth: _, ...rest } = round
              change(index, isRest(text) ? rest : { ...rest, finishedWidth: lengthForFile(text) })
            }}
          />
          <label>
            {t('Fabric of round {n}', { n: index + 1 })}
            <select value={round.fabric} onChange={(event) => change(index, { ...round, fabric: event.target.value })}>
              <FabricOptions fabrics={quilt.fabrics} />
            </select>
          </label>
        </div>
      ))}
      <div className="buttons">
        {fabric !== undefined && rounds.length < 4 && (
          <button type="button" onClick={() => onChange(rounds.length === 0 ? [{ fabric }] : [{ finishedWidth: 1, fabric }, ...rounds])}>
            {rounds.length === 0 ? t('Frame the blocks') : t('Add a round inside')}
          </button>
        )}
        {rounds.length > 0 && (
          <button type="button" className="danger" onClick={() => onChange(rounds.slice(1))}>
            {rounds.length === 1 ? t('No frame') : t('Delete the inner round')}
          </button>
        )}
      </div>
    </>
  )
}

const isRest = (text: string): boolean => text.trim() === '' || text.trim() === t('what is left')
