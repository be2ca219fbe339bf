import type { Bow, BowFields, Face } from '../../../shared/contract/bows.ts';
import type { BowRow } from '../../storage/tables.ts';

export type BowColumns = Omit<BowRow, 'id' | 'row_version' | 'customer_id' | 'created_at'>;

function faceColumns({ back, belly }: BowFields['faces']) {
  return {
    back_facing: back.facing,
    back_glass_made_in: back.glassMadeIn,
    back_glass_now_in: back.glassNowIn,
    back_glass_how: back.glassHow,
    belly_facing: belly.facing,
    belly_glass_made_in: belly.glassMadeIn,
    belly_glass_now_in: belly.glassNowIn,
    belly_glass_how: belly.glassHow,
  };
}

function shapeColumns(fields: BowFields) {
  return {
    tip_to_tip_in: fields.tipToTipIn,
    profile: fields.profile,
    recurve_depth_in: fields.recurveDepthIn,
    throat_to_fade_in: fields.throatToFadeIn,
    limb_pad_deg: fields.limbPadDeg,
    upper_fade_in: fields.limbs.upper.fadeIn,
    upper_limb_in: fields.limbs.upper.limbIn,
    lower_fade_in: fields.limbs.lower.fadeIn,
    lower_limb_in: fields.limbs.lower.limbIn,
  };
}

export function bowColumns(fields: BowFields): BowColumns {
  return {
    kind: fields.kind,
    construction: fields.construction,
    take_down: fields.takeDown,
    hand: fields.hand,
    maker: fields.maker,
    model: fields.model,
    serial: fields.serial,
    amo_length_in: fields.amoLengthIn,
    marked_weight_lbf: fields.markedWeightLbf,
    marked_draw_in: fields.markedDrawIn,
    marked_draw_reference: fields.markedDrawReference,
    max_safe_draw_in: fields.maxSafeDrawIn,
    ...shapeColumns(fields),
    ...faceColumns(fields.faces),
    core_wood: fields.coreWood,
    moisture_pct: fields.moisturePct,
    edge_radius_in: fields.edgeRadiusIn,
    low_stretch_tips: fields.lowStretchTips,
    brace_low_in: fields.braceLowIn,
    brace_high_in: fields.braceHighIn,
    listed_species: fields.listedSpecies,
    notes: fields.notes,
  };
}

function faceOf(
  facing: Face['facing'],
  glassMadeIn: number | null,
  glassNowIn: number | null,
  glassHow: Face['glassHow'],
): Face {
  return { facing, glassMadeIn, glassNowIn, glassHow };
}

function facesOf(row: BowRow): BowFields['faces'] {
  return {
    back: faceOf(
      row.back_facing,
      row.back_glass_made_in,
      row.back_glass_now_in,
      row.back_glass_how,
    ),
    belly: faceOf(
      row.belly_facing,
      row.belly_glass_made_in,
      row.belly_glass_now_in,
      row.belly_glass_how,
    ),
  };
}

export function bowOf(row: BowRow): Bow {
  return {
    id: row.id,
    rowVersion: row.row_version,
    createdAt: row.created_at,
    customerId: row.customer_id,
    kind: row.kind,
    construction: row.construction,
    takeDown: row.take_down,
    hand: row.hand,
    maker: row.maker,
    model: row.model,
    serial: row.serial,
    amoLengthIn: row.amo_length_in,
    tipToTipIn: row.tip_to_tip_in,
    markedWeightLbf: row.marked_weight_lbf,
    markedDrawIn: row.marked_draw_in,
    markedDrawReference: row.marked_draw_reference,
    maxSafeDrawIn: row.max_safe_draw_in,
    profile: row.profile,
    recurveDepthIn: row.recurve_depth_in,
    throatToFadeIn: row.throat_to_fade_in,
    limbPadDeg: row.limb_pad_deg,
    limbs: {
      upper: { fadeIn: row.upper_fade_in, limbIn: row.upper_limb_in },
      lower: { fadeIn: row.lower_fade_in, limbIn: row.lower_limb_in },
    },
    faces: facesOf(row),
    coreWood: row.core_wood,
    moisturePct: row.moisture_pct,
    edgeRadiusIn: row.edge_radius_in,
    lowStretchTips: row.low_stretch_tips,
    braceLowIn: row.brace_low_in,
    braceHighIn: row.brace_high_in,
    listedSpecies: row.listed_species,
    notes: row.notes,
  };
}
