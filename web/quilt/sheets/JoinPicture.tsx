/** A way of joining two quilted places, cut across: fronts above, batting, backings below. */
import type { ReactElement } from 'react'
import type { Way } from '../../../geometry/index.ts'

/** From 0 to 120 across; fronts at 14, batting 18 to 30, backings at 34. */
const PICTURES: Readonly<Record<Way, ReactElement>> = {
  whole: (
    <>
      <rect className="batting" x="2" y="18" width="116" height="12" />
      <path className="backing" d="M2 34H118" />
      <path className="front" d="M2 14H60V17H74M118 14H60" />
    </>
  ),
  strips: (
    <>
      <rect className="batting" x="2" y="18" width="44" height="12" />
      <rect className="batting" x="74" y="18" width="44" height="12" />
      <path className="front" d="M2 14H46M74 14H118" />
      <path className="backing" d="M2 34H46M74 34H118" />
      <path className="strip" d="M46 10H36M36 10H84M74 10H84" />
      <path className="strip" d="M36 38H84V41H36" />
    </>
  ),
  fronts: (
    <>
      <rect className="batting" x="2" y="18" width="57" height="12" />
      <rect className="batting" x="61" y="18" width="57" height="12" />
      <path className="front" d="M2 14H60V17H74M118 14H60" />
      <path className="backing" d="M2 34H76M118 37H56V40H68" />
    </>
  ),
  'backing-over': (
    <>
      <rect className="batting" x="2" y="18" width="57" height="12" />
      <rect className="batting" x="61" y="18" width="57" height="12" />
      <path className="front" d="M2 14H58M62 14H118" />
      <path className="backing" d="M2 34H59V9H38V12H46M118 34H61V9H82V12H74" />
    </>
  ),
  butted: (
    <>
      <rect className="batting" x="2" y="18" width="57" height="12" />
      <rect className="batting" x="61" y="18" width="57" height="12" />
      <path className="front" d="M2 14H59M61 14H118" />
      <path className="backing" d="M2 34H59M61 34H118" />
      <path className="zigzag" d="M55 18L65 21L55 24L65 27L55 30" />
      <path className="strip" d="M48 13V9H72V13M48 35V39H72V35" />
    </>
  ),
}

export const JoinPicture = ({ join }: { readonly join: Way }) => (
  <svg className="join-picture" viewBox="0 0 120 46" aria-hidden="true">
    {PICTURES[join]}
  </svg>
)
