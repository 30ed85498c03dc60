/** What the stash gives for one fabric of the block: what each piece can be cut into, how to cut it, and what is still to buy. */
import { type Block, type MeasureUnit, shortSideFirst, type StashFor, type StashPiece } from '../../../geometry/index.ts'
import { StripsPicture } from '../../drawing/StripsPicture.tsx'
import { sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'

interface Props {
  readonly row: StashFor
  readonly block: Block
  readonly pieces: readonly StashPiece[]
  readonly unit: MeasureUnit
}

/** `6 rectangles 2 1/2 × 6 1/2 in` */
function piecesOf(size: readonly [number, number], count: number, unit: MeasureUnit): string {
  const said = { size: saySides(shortSideFirst(size), unit) }
  return size[0] === size[1]
    ? tn(count, '1 square {size}', '{n} squares {size}', said)
    : tn(count, '1 rectangle {size}', '{n} rectangles {size}', said)
}

export function StashUse({ row, block, pieces, unit }: Props) {
  const fabric = block.fabrics.find(({ id }) => id === row.fabric)
  const sizeOf = (id: string): string => saySides(pieces.find((piece) => piece.id === id)?.size ?? [0, 0], unit)
  const { name = row.fabric, colour = '#888888' } = fabric ?? {}
  const buy =
    row.toBuy.length === 0
      ? t('nothing to buy')
      : t('buy {length} ({exact})', { length: sayBought(row.buy, unit), exact: sayOneSize(row.toBuy.length, unit) })
  return (
    <div className="cloth served">
      <h3>
        <span className="dot" style={{ background: colour }} aria-hidden="true" />
        {name}
        <small> {buy}</small>
      </h3>
      {row.serves.length > 0 && (
        <ul>
          {row.serves.map(({ id, pieces: given }) => (
            <li key={id}>
              <small>
                {given.length === 0
                  ? t('{size}: too small for any piece.', { size: sizeOf(id) })
                  : t('{size} makes {what}.', {
                      size: sizeOf(id),
                      what: given.map(({ size, each }) => piecesOf(size, each, unit)).join(t(', or ')),
                    })}
              </small>
            </li>
          ))}
        </ul>
      )}
      {row.cuts.length > 0 && (
        <details className="order">
          <summary>{tn(row.cuts.length, 'How to cut 1 piece from your stash', 'How to cut {n} pieces from your stash')}</summary>
          {row.cuts.map(({ id, along, strips }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one size are cut one after the other
            <figure key={index}>
              <figcaption className="hint">
                {t('A piece {size}, with strips along its {along} side:', { size: sizeOf(id), along: sayOneSize(along, unit) })}
              </figcaption>
              <StripsPicture strips={strips} name={name} colour={colour} width={along} unit={unit} across={220} />
            </figure>
          ))}
        </details>
      )}
      {row.cuts.length > 0 && !row.proved && <p className="hint">{t('You may manage with less.')}</p>}
    </div>
  )
}
