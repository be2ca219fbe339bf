import { between, type Seeded } from '../seeded.ts';
import { grained, type Point, polyline, sampled, shadow, shape, smooth } from './svg.ts';

const card = '#b98f5e';
const strokes = (x: number, y: number, rows: number, random: Seeded, ink = '#3b3b3b') =>
  Array.from({ length: rows }, (_, row) => {
    const line = sampled(
      12,
      (share): Point => [
        x + share * between(random, 90, 140),
        y + row * 20 + between(random, -4, 4),
      ],
    );
    return shape(smooth(line), `fill="none" stroke="${ink}" stroke-width="2.4" opacity="0.8"`);
  }).join('');

/** A long parcel on the table, from above and a little to the side. */
export function box(random: Seeded, crushed: boolean): string {
  const top: Point[] = crushed
    ? [
        [60, 340],
        [1010, 210],
        [1060, 262],
        [1052, 300],
        [1128, 350],
        [110, 520],
      ]
    : [
        [60, 340],
        [1080, 200],
        [1130, 350],
        [110, 520],
      ];
  const front: Point[] = crushed
    ? [
        [110, 520],
        [1128, 350],
        [1096, 420],
        [1120, 452],
        [1084, 486],
        [116, 690],
      ]
    : [
        [110, 520],
        [1130, 350],
        [1132, 500],
        [116, 690],
      ];
  const end: Point[] = [
    [60, 340],
    [110, 520],
    [116, 690],
    [62, 500],
  ];
  const whole = polyline([...top.slice(0, -1), ...front.slice(2), [62, 500]], true);
  const tape = polyline(
    crushed
      ? [
          [82, 412],
          [1040, 268],
          [1060, 300],
          [92, 452],
        ]
      : [
          [82, 412],
          [1102, 256],
          [1114, 292],
          [92, 452],
        ],
    true,
  );
  return (
    shadow(whole, 16, 40, 14, 0.55) +
    grained(polyline(top, true), card, 'card') +
    grained(polyline(front, true), '#94703f', 'card') +
    grained(polyline(end, true), '#7d5e35', 'card') +
    shape(tape, 'fill="#d9c48c" opacity="0.8"') +
    shape(tape, 'fill="none" stroke="#fff" stroke-width="1.5" opacity="0.35"') +
    `<g transform="rotate(-9 520 380)"><rect x="430" y="330" width="210" height="108" fill="#efece2"/>${strokes(452, 356, 4, random)}</g>` +
    (crushed ? crushedCorner() : '')
  );
}

function crushedCorner(): string {
  const creases: Point[][] = [
    [
      [1010, 210],
      [1030, 300],
      [1012, 372],
    ],
    [
      [1060, 262],
      [1006, 306],
      [948, 330],
    ],
    [
      [1052, 300],
      [1020, 356],
      [1050, 430],
      [1010, 500],
    ],
    [
      [1128, 350],
      [1070, 392],
      [1096, 420],
    ],
    [
      [1096, 420],
      [1030, 430],
      [968, 470],
    ],
  ];
  return (
    '<path d="M1052 300 L1128 350 L1096 420 L1058 384 Z" fill="#1d140b" opacity="0.78"/>' +
    '<path d="M1010 210 L1060 262 L1052 300 L1012 268 Z" fill="#6c5029" opacity="0.85"/>' +
    '<path d="M1096 420 L1120 452 L1084 486 L1040 452 Z" fill="#5f4522" opacity="0.8"/>' +
    creases
      .map(
        (crease) =>
          shape(polyline(crease), 'fill="none" stroke="#3c2a13" stroke-width="4" opacity="0.7"') +
          shape(
            polyline(crease.map(([x, y]): Point => [x + 5, y + 3])),
            'fill="none" stroke="#e7cb98" stroke-width="2.4" opacity="0.6"',
          ),
      )
      .join('')
  );
}

/** Brown paper balled up around whatever came in the box: many small faces, each in its own light. */
export function packingPaper(random: Seeded): string {
  const columns = 15;
  const rows = 6;
  const corner = (column: number, row: number): Point => [
    -40 + (column * 1290) / columns + between(random, -34, 34),
    430 + (row * 430) / rows + between(random, -26, 26) + (row === 0 ? 40 * Math.sin(column) : 0),
  ];
  const grid = Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (_, column) => corner(column, row)),
  );
  const faces: string[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const [a, b] = [grid[row]?.[column], grid[row]?.[column + 1]];
      const [c, d] = [grid[row + 1]?.[column], grid[row + 1]?.[column + 1]];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      for (const face of [
        [a, b, c],
        [b, d, c],
      ]) {
        const light = Math.round(between(random, 118, 196));
        const colour = `rgb(${light},${Math.round(light * 0.79)},${Math.round(light * 0.55)})`;
        faces.push(
          shape(polyline(face, true), `fill="${colour}" stroke="${colour}" stroke-width="1.5"`),
        );
      }
    }
  }
  return `<g filter="url(#crease)">${faces.join('')}</g>`;
}

/** A bill from whoever sold the bow, as proof of its worth: the words cannot be read. */
export function bill(random: Seeded): string {
  const sheet = polyline(
    [
      [330, 90],
      [880, 60],
      [930, 830],
      [300, 850],
    ],
    true,
  );
  const rows = Array.from({ length: 9 }, (_, row) =>
    shape(
      `M380 ${330 + row * 42} h${between(random, 180, 320).toFixed(0)} M760 ${326 + row * 42} h${between(random, 50, 90).toFixed(0)}`,
      'stroke="#4d4d52" stroke-width="7" opacity="0.55" stroke-dasharray="26 7 41 8 18 9"',
    ),
  ).join('');
  return (
    shadow(sheet, 10, 18, 14, 0.5) +
    shape(sheet, 'fill="#efebe0"') +
    shape(sheet, 'fill="url(#sheen)" opacity="0.12"') +
    '<path d="M330 460 L905 440" stroke="#c9c3b3" stroke-width="4" opacity="0.8"/>' +
    '<rect x="380" y="130" width="150" height="60" fill="#5f7a72" opacity="0.8"/>' +
    strokes(380, 236, 3, random, '#5a5a60') +
    rows +
    '<path d="M640 742 C 680 700 690 780 730 735 S 790 700 830 750" fill="none" stroke="#27406b" stroke-width="4"/>'
  );
}
