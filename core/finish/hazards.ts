export { type Hazard, hazardCaution } from '../../shared/hazards.ts';
