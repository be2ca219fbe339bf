import type { Kysely } from 'kysely';
import type { OrderFinish } from '../../../shared/contract/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { filmAddsPercent, filmGpa, psiFromGpa, type Section } from '../../limb/index.ts';
import type { BowRow, Tables } from '../../storage/tables.ts';
import { coreGpaOf, glassGpa, unknownCoreGpa } from '../plans/core-moduli.ts';
import { typicalOf, typicalThicknessIn } from '../plans/typical.ts';
import type { FinishRows } from './stored.ts';
import { standingCoats } from './window-of.ts';

/** Dry film on the limbs, mil, of the coats whose film can be gauged; null where none can. */
export function dryMilOf(rows: Pick<FinishRows, 'coats'>): number | null {
  const gauged = standingCoats(rows).filter((coat) => {
    const sections = JSON.parse(coat.sections_json) as string[];
    return coat.dry_mil !== null && (sections.length === 0 || sections.some(isLimb));
  });
  if (gauged.length === 0) return null;
  return gauged.reduce((sum, coat) => sum + (coat.dry_mil ?? 0) * coat.coats, 0);
}

const isLimb = (section: string) => section.endsWith('limb');

/** The middle of a limb, as it is known of the bow; a usual one of its kind where it is not. */
function midLimb(bow: BowRow, thicknessIn: number | null): Section {
  const typical = typicalOf[bow.kind];
  const whole = thicknessIn ?? typicalThicknessIn(bow.kind, typical.limbIn / 2, typical.limbIn);
  const glassy = bow.construction !== 'all-wood';
  const faces = [bow.belly_glass_now_in, bow.back_glass_now_in].map((known) =>
    glassy ? (known ?? typical.glassIn) : 0,
  );
  const core = psiFromGpa(coreGpaOf(bow.core_wood) ?? unknownCoreGpa);
  const coreIn = whole - faces.reduce((sum, each) => sum + each, 0);
  const [belly = 0, back = 0] = faces.map((each) => (coreIn > 0 ? each : 0));
  const layers = [
    { thicknessIn: belly, modulusPsi: psiFromGpa(glassGpa) },
    { thicknessIn: coreIn > 0 ? coreIn : whole, modulusPsi: core },
    { thicknessIn: back, modulusPsi: psiFromGpa(glassGpa) },
  ].filter((layer) => layer.thicknessIn > 0);
  const widthIn = (typical.fadeWidthIn + typical.tipWidthIn) / 2;
  return { layers, bellyWidthIn: widthIn, backWidthIn: widthIn, edgeRadiusIn: 0 };
}

/** Thickness measured nearest the middle of a limb, inches; null where none was measured. */
async function midThicknessIn(
  db: Kysely<Tables>,
  order: { bow_id: string | null; limb_set_id: string | null },
): Promise<number | null> {
  const stations = await db
    .selectFrom('geometry_station')
    .innerJoin('geometry', 'geometry.id', 'geometry_station.geometry_id')
    .select(['thickness_in', 'from_fade_in', 'geometry.version'])
    .where('geometry.bow_id', '=', order.bow_id ?? '')
    .where('geometry.struck_reason', 'is', null)
    .where('thickness_in', 'is not', null)
    .where((eb) =>
      order.limb_set_id === null
        ? eb('geometry.limb_set_id', 'is', null)
        : eb('geometry.limb_set_id', '=', order.limb_set_id),
    )
    .execute();
  const newest = Math.max(...stations.map((each) => each.version));
  const latest = stations
    .filter((each) => each.version === newest)
    .toSorted((a, b) => a.from_fade_in - b.from_fade_in);
  return latest[Math.floor(latest.length / 2)]?.thickness_in ?? null;
}

/**
 * What the coats add to the draw weight: a note beside the weights, which it never changes. The
 * final weighing measures it anyway.
 */
export async function filmWeightOf(
  db: Kysely<Tables>,
  order: { bow_id: string | null; limb_set_id: string | null },
  rows: FinishRows,
): Promise<OrderFinish['film']> {
  const dryMil = dryMilOf(rows);
  if (dryMil === null || dryMil <= 0) return null;
  const bow = await db
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  if (bow === undefined) return null;
  const film = { thicknessIn: dryMil / 1000, modulusPsi: psiFromGpa(filmGpa) };
  const percent = filmAddsPercent(midLimb(bow, await midThicknessIn(db, order)), film);
  const sentence =
    `About ${decimal(dryMil)} mil of dry film on each face adds about ` +
    `${decimal(percent)} percent to the draw weight.`;
  return { dryMil, percent, sentence };
}
