import type { BowLook } from './look.ts';
import { sideView } from './side-view.ts';
import { grained } from './svg.ts';

/** Lines drawn on the plaster to see how the limbs bend, and the post that holds the grip. */
function gridAndPost(): string {
  const lines = Array.from({ length: 13 }, (_, place) => {
    const x = 60 + place * 90;
    return `<path d="M${x} 120 V820" stroke="#6d7b86" stroke-width="${place === 6 ? 4 : 2}" opacity="0.5"/>`;
  });
  const rows = Array.from({ length: 9 }, (_, place) => {
    const y = 140 + place * 82;
    return `<path d="M40 ${y} H1160" stroke="#6d7b86" stroke-width="2" opacity="0.5"/>`;
  });
  return (
    lines.join('') +
    rows.join('') +
    '<rect class="shadow" x="572" y="290" width="84" height="640" fill="#000" opacity="0.35" filter="url(#blur6)"/>' +
    grained('M560 276 H640 V936 H560 Z', '#a98055', 'wood') +
    '<path d="M548 280 Q600 320 652 280 L652 246 Q600 284 548 246 Z" fill="#5a4632"/>'
  );
}

/** A bow on the tillering wall, back up, the string drawn down by a rope with a scale in it. */
export function onTheWall(look: BowLook, bend: number): string {
  const scale = 1010 / look.length;
  return (
    gridAndPost() +
    '<path d="M600 560 V740" stroke="#cbbd98" stroke-width="7"/>' +
    sideView(look, { scale, x: 600, y: 262, turn: 0 }, { bend }) +
    '<rect x="566" y="650" width="68" height="118" rx="10" fill="#30363a"/><circle cx="600" cy="704" r="27" fill="#e8e6dd"/>' +
    '<path d="M600 704 L614 686" stroke="#a3271d" stroke-width="5"/><path d="M600 768 V900" stroke="#cbbd98" stroke-width="7"/>'
  );
}
