/** A row of a list of sizes. */
export function SizeRow({ name, size }: { readonly name: string; readonly size: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{size}</dd>
    </>
  )
}
