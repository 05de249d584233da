/** An address as a square code that a camera reads. */
import { encode } from 'uqr';

/** The square code as one path, a unit square a module, with the quiet border that scanners need. */
const pathOf = (text: string) => {
  const { data, size } = encode(text, { border: 4 });
  const path = data
    .flatMap((row, y) => row.map((dark, x) => (dark ? `M${x},${y}h1v1h-1z` : '')))
    .join('');
  return { path, size };
};

export const SquareCode = ({ address }: { readonly address: string }) => {
  const { path, size } = pathOf(address);
  return (
    <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={address}>
      <path d={path} fill="#000" shape-rendering="crispEdges" />
    </svg>
  );
};
