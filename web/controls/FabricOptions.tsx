/** The options of a list to choose a fabric from. */
import type { Fabric } from '../../geometry/index.ts'

export const FabricOptions = ({ fabrics }: { readonly fabrics: readonly Fabric[] }) =>
  fabrics.map(({ id, name }) => (
    <option key={id} value={id}>
      {name}
    </option>
  ))
