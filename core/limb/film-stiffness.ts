import { type Section, sectionStiffness } from './section.ts';

/**
 * Modulus of a cured clear film, GPa. From memory: handbooks give unfilled cured epoxies and
 * urethanes 2 to 3 GPa; the film's share of a limb is so small that the spread hardly shows.
 */
export const filmGpa = 2.5;

/**
 * What a film on both faces adds to the stiffness of a limb, percent; draw weight goes with it.
 * @param section the bare limb
 * @param film on each face: its thickness, inches, and modulus, psi
 * @throws ShopError BAD_INPUT as {@link sectionStiffness}, and for a film of no thickness
 */
export function filmAddsPercent(
  section: Section,
  film: { thicknessIn: number; modulusPsi: number },
): number {
  const bare = sectionStiffness(section).eiLbfIn2;
  const coated = sectionStiffness({ ...section, layers: [film, ...section.layers, film] }).eiLbfIn2;
  return (coated / bare - 1) * 100;
}
