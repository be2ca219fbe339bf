import type { BowLook } from './look.ts';
import { glasses } from './materials.ts';

/** Colour of the glass on a limb, or of the wood that shows through it. */
export const facingOf = (look: BowLook) =>
  look.glass === null || look.glass === 'clear' ? '#e9d5a6' : glasses[look.glass];

/** A torn piece of tape that points at something. */
export function maskingTape(x: number, y: number, turn: number, mark: 'arrow' | 'none'): string {
  const arrow =
    mark === 'arrow'
      ? '<path d="M60 66 C 90 40 110 34 150 22 M150 22 l-26 -4 M150 22 l-14 24" fill="none" stroke="#27406b" stroke-width="6" stroke-linecap="round"/>'
      : '';
  return (
    `<g transform="translate(${x} ${y}) rotate(${turn})"><path d="M0 6 L12 0 L206 0 L214 10 L206 22 L214 40 L206 84 L8 84 L0 70 L7 50 L0 30 Z" fill="#e3d39f"/>` +
    `<path d="M4 14 H208 M4 66 H208" stroke="#b7a468" stroke-width="1.4" opacity="0.5"/>${arrow}</g>`
  );
}
