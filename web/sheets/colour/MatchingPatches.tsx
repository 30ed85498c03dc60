/** Recolours matching patches together, and exchanges two fabrics. */
import { useMemo, useState } from 'react'
import { matchingPatches, type Block, colourPatches, exchangeFabrics, message, type PatchName } from '../../../geometry/index.ts'
import { unitShapes, type Point } from '../../document/shapes.ts'
import { edit, setView, getState, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { KIND_NAMES, patchName } from '../../words/unitWords.ts'

/** In a block of more units, a list of groups is too long to help. */
const MOST_UNITS = 1500
const MOST_GROUPS = 40

export function MatchingPatches() {
  const block = useStore(({ history }) => history.block)
  const groups = useMemo(() => (block.units.length > MOST_UNITS ? [] : matchingPatches(block)), [block])
  return (
    <section aria-labelledby="groups-title">
      <h2 id="groups-title">{t('Change matching patches together')}</h2>
      <p className="hint">
        {groups.length === 0
          ? t('This block has too many patches to list. Select units on the board instead.')
          : t('Each group matches when you turn or flip the block.')}
      </p>
      <ul className="groups">
        {groups.slice(0, MOST_GROUPS).map(({ patches, fabrics }) => (
          <li key={patches.map(({ unit, name }) => `${unit} ${name}`).join()}>
            <Group block={block} patches={patches} fabrics={fabrics} />
          </li>
        ))}
      </ul>
      {groups.length > MOST_GROUPS && (
        <p className="hint">{tn(groups.length - MOST_GROUPS, '1 more group isn’t listed.', '{n} more groups aren’t listed.')}</p>
      )}
      <ExchangeFabrics block={block} />
    </section>
  )
}

interface GroupProps {
  readonly block: Block
  readonly patches: readonly PatchName[]
  readonly fabrics: readonly string[]
}

function Group({ block, patches, fabrics }: GroupProps) {
  const names = [...new Set(patches.map((patch) => patchWords(block, patch)))].slice(0, 4).join(', ')
  const point = (): void => setView({ pointedLines: outlinesOf(block, patches) })
  const leave = (): void => setView({ pointedLines: null })
  return (
    <label onPointerEnter={point} onPointerLeave={leave} onFocus={point} onBlur={leave}>
      {tn(patches.length, '1 patch: {names}', '{n} patches: {names}', { names })}
      <select
        value={fabrics.length === 1 ? fabrics[0] : ''}
        onChange={(event) => {
          const fabric = event.target.value
          edit(
            colourPatches(
              patches.map((patch) => ({ ...patch, fabric })),
              message('recolour-alike-patches'),
            ),
          )
          setView({ notice: tn(patches.length, '1 patch recoloured.', '{n} patches recoloured.') })
        }}
      >
        {fabrics.length > 1 && <option value="">{t('different fabrics')}</option>}
        <FabricOptions fabrics={block.fabrics} />
      </select>
    </label>
  )
}

/** A unit of one patch is called by its kind. */
function patchWords(block: Block, { unit, name }: PatchName): string {
  const kind = block.units.find(({ id }) => id === unit)?.kind
  return name === 'patch' && kind !== undefined ? t(KIND_NAMES[kind]) : patchName(name)
}

/** The closed outline of each patch. */
function outlinesOf(block: Block, patches: readonly PatchName[]): Point[][] {
  const wanted = new Set(patches.map(({ unit, name }) => `${unit} ${name}`))
  return block.units
    .flatMap((unit) => unitShapes(unit))
    .filter(({ unit, name }) => wanted.has(`${unit} ${name}`))
    .map(({ corners }) => [...corners, corners[0] as Point])
}

function ExchangeFabrics({ block }: { readonly block: Block }) {
  const [picked, setPicked] = useState<readonly [string, string]>(['', ''])
  const known = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.id ?? ''
  const [one, other] = [known(picked[0]), known(picked[1])]
  const list = (label: string, value: string, take: (id: string) => void) => (
    <label>
      {label}
      <select value={value} onChange={(event) => take(event.target.value)}>
        <option value="">{t('select a fabric')}</option>
        <FabricOptions fabrics={block.fabrics} />
      </select>
    </label>
  )
  return (
    <>
      <h3>{t('Swap two fabrics')}</h3>
      <div className="pairs">
        {list(t('First fabric'), one, (id) => setPicked([id, other]))}
        {list(t('Second fabric'), other, (id) => setPicked([one, id]))}
      </div>
      <button type="button" className="main" disabled={one === '' || other === '' || one === other} onClick={() => exchange(one, other)}>
        {t('Swap')}
      </button>
    </>
  )
}

function exchange(one: string, other: string): void {
  edit(exchangeFabrics(one, other))
  const name = (id: string): string => getState().history.block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  setView({ notice: t('{name} and {other} are swapped.', { name: name(one), other: name(other) }) })
}
