import type { OrderDetail } from '../../../shared/contract/orders.ts';

/** The usual cautions for what this order will have done to it; they advise, the data sheet decides. */
export function cautionsFor(order: OrderDetail): string[] {
  const { route } = order.card;
  const lines = [
    'Use a stringer. Eye protection; stand clear of the limb path when weighing. Never dry-fire, never past the maximum safe draw.',
  ];
  if (route.includes('weight-work') || route.includes('strip-sand')) {
    lines.push(
      'Glass and wood dust: extraction and a fitted respirator. No heat gun and no chemical stripper on laminations.',
    );
  }
  if (route.includes('finish')) {
    lines.push(
      'Some two-part finishes contain isocyanates: supplied air as their sheet says, not a dust mask. Solvents away from ignition. Solvent and oil rags into a closed metal can, emptied daily.',
    );
  }
  lines.push(
    'The data sheet, the finish maker, the local fire and building code and a licensed professional decide.',
  );
  return lines;
}
