import { create } from 'qrcode';

type QrCodeProps = {
  /** what a phone's camera opens */
  text: string;
  label: string;
};

/** The light edge that a reader needs, in modules (ISO/IEC 18004). */
const QUIET = 4;

/** A QR code as a drawing, sharp at any size; black on white whatever the look, so that cameras read it. */
export function QrCode({ text, label }: QrCodeProps) {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  const side = modules.size + 2 * QUIET;
  return (
    <svg viewBox={`0 0 ${side} ${side}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <rect width={side} height={side} fill="#fff" />
      <path d={pathOf(modules.data, modules.size)} fill="#000" />
    </svg>
  );
}

/** A square for each dark module, row by row. */
function pathOf(dark: ArrayLike<number>, size: number): string {
  const squares: string[] = [];
  for (let at = 0; at < size * size; at += 1)
    if (dark[at]) squares.push(`M${(at % size) + QUIET} ${Math.floor(at / size) + QUIET}h1v1h-1z`);
  return squares.join('');
}
