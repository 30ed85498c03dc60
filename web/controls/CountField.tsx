/** A small number to choose. */
interface Props {
  readonly label: string
  readonly value: number
  readonly choices: readonly number[]
  readonly take: (count: number) => void
}

export function CountField({ label, value, choices, take }: Props) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => take(Number(event.target.value))}>
        {choices.map((count) => (
          <option key={count} value={count}>
            {count}
          </option>
        ))}
      </select>
    </label>
  )
}
