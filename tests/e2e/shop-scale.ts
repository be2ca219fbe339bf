import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';

/** A scale that was checked with two loads today. */
export async function checkedScale(client: Client): Promise<string> {
  const { id } = await client.scales.add({
    commandId: newCommandId(),
    name: 'bench scale',
    resolutionLbf: 0.1,
  });
  await client.scales.check({
    commandId: newCommandId(),
    scaleId: id,
    lowLoadLbf: 20,
    lowReadingLbf: 20.1,
    highLoadLbf: 60,
    highReadingLbf: 60.2,
  });
  return id;
}

/** A weighing at 28 inches that does not go through the screen; answers as the program does. */
export function weighBehind(
  client: Client,
  of: {
    orderId: string;
    scaleId: string;
    phase: 'arrival' | 'work' | 'after-sanding';
    forceLbf: number;
  },
) {
  const { forceLbf, ...subject } = of;
  return client.readings.add({
    commandId: newCommandId(),
    ...subject,
    drawReference: 'amo',
    rigZeroLbf: 0,
    braceIn: 7.25,
    stringNote: 'shop string, 14 strand',
    stringTrack: '',
    limbSetId: null,
    riserNote: '',
    moisturePct: null,
    strungMinutes: null,
    supportPoint: 'throat',
    pullPoint: 'nock point',
    tillerIn: 0.125,
    temperatureF: 68,
    flexedFirst: true,
    note: '',
    pulls: [forceLbf + 2, forceLbf, forceLbf].map((force) => ({ drawIn: 28, forceLbf: force })),
  });
}
