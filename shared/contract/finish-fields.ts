import { between, instant, line } from '../fields.ts';
import { z } from '../zod.ts';

export const sentence = line(500);
export const sentences = z.array(sentence).max(60);
export const number = z.number();

export const airF = between(-40, 122, 'Air is between -40 and 122 F.');
export const surfaceF = between(-40, 200, 'A surface is between -40 and 200 F.');
export const humidityPercent = between(0.1, 100, 'Humidity is above 0 and at most 100 percent.');
export const wetMil = between(0.05, 40, 'A wet film is between 0.05 and 40 mil.');
export const coatCount = z.int().min(1, 'Give one coat or more.').max(20);
/** When it was done; null for now. Never later than now. */
export const doneAt = instant.nullable();
