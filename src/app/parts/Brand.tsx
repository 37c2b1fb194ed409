/** The product's sign: two hands held round an earth symbol. */
export const Brand = () => (
  <svg className="brand" viewBox="0 0 48 48" aria-hidden="true">
    <path className="brand-hands" d="M17 5C4 12 4 36 17 43 M31 5c13 7 13 31 0 38" />
    <path className="brand-earth" d="M24 10v15 M15 25h18 M18.5 31h11 M21.5 37h5" />
  </svg>
)
