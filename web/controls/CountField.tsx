/** A list to choose a small number from. */
interface Props {
  readonly label: string
  readonly value: number
  readonly choices: readonly number[]
  readonly onChange: (count: number) => void
}

export function CountField({ label, value, choices, onChange }: Props) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => onChange(Number(event.target.value))}>
        {choices.map((count) => (
          <option key={count} value={count}>
            {count}
          </option>
        ))}
      </select>
    </label>
  )
}
