import { describe, expect, test } from 'vitest';
import {
  belongs,
  inOrder,
  linksOf,
  listPlace,
  type PhotoPlace,
  subjectOf,
} from '../../../renderer/parts/photos/photo-place.ts';
import { altOf, titleOf } from '../../../renderer/parts/photos/photo-words.ts';
import type { Attachment } from '../../../shared/contract/attachments.ts';

const photo: Attachment = {
  id: 'a',
  rowVersion: 1,
  orderId: 'o1',
  orderNumber: '26-0001',
  bowId: 'b1',
  findingId: null,
  incidentId: null,
  shipmentId: null,
  about: 'bow',
  fileName: 'IMG 0042.JPG',
  mediaType: 'image/jpeg',
  bytes: 1000,
  widthPx: 40,
  heightPx: 30,
  takenAt: '2026-03-01T17:45:09',
  hasLocation: false,
  caption: '',
  addedAt: '2026-03-02T09:00:00.000Z',
  personName: 'Ida Penn',
  struckReason: null,
};

describe('which list a strip reads', () => {
  test.each<[PhotoPlace, unknown]>([
    [{ orderId: 'o1', bowId: 'b1', findingId: 'f1' }, { orderId: 'o1' }],
    [{ findingId: 'f1', bowId: 'b1' }, { findingId: 'f1' }],
    [{ incidentId: 'i1' }, { incidentId: 'i1' }],
    [{ shipmentId: 's1' }, { shipmentId: 's1' }],
    [{ orderId: null, bowId: 'b1' }, { bowId: 'b1' }],
    [{ about: 'bow' }, null],
  ])('%o', (of, place) => {
    expect(listPlace(of)).toEqual(place);
  });
});

describe('which files of the list a strip shows', () => {
  test('all of them, those of its record, or those about its subject', () => {
    const ofFinding = { ...photo, findingId: 'f1', about: 'finding' as const };
    expect(belongs(ofFinding, { orderId: 'o1' })).toBe(true);
    expect(belongs(ofFinding, { orderId: 'o1', findingId: 'f1' })).toBe(true);
    expect(belongs(photo, { orderId: 'o1', findingId: 'f1' })).toBe(false);
    expect(belongs(photo, { orderId: 'o1', about: 'packaging' })).toBe(false);
    expect(belongs({ ...photo, about: 'packaging' }, { about: 'packaging' })).toBe(true);
  });

  test('a photograph of a finding stays with it when it is said to show something else', () => {
    const moved = { ...photo, findingId: 'f1', about: 'bow' as const };
    expect(belongs(moved, { findingId: 'f1', about: 'finding' })).toBe(true);
  });

  test('struck ones come last', () => {
    const struck = { ...photo, id: 's', struckReason: 'another bow' };
    expect(inOrder([struck, photo]).map((file) => file.id)).toEqual(['a', 's']);
  });
});

describe('what is sent with a file that is added', () => {
  test('the order stands for its bow', () => {
    expect(linksOf({ orderId: 'o1', bowId: 'b1' })).toMatchObject({ orderId: 'o1', bowId: null });
    expect(linksOf({ findingId: 'f1', bowId: 'b1' })).toMatchObject({ bowId: null });
    expect(linksOf({ bowId: 'b1' })).toMatchObject({ orderId: null, bowId: 'b1' });
  });

  test('what it shows follows from where it was dropped', () => {
    expect(subjectOf({ orderId: 'o1' })).toBe('bow');
    expect(subjectOf({ orderId: 'o1', findingId: 'f1' })).toBe('finding');
    expect(subjectOf({ incidentId: 'i1' })).toBe('incident');
    expect(subjectOf({ shipmentId: 's1', about: 'value' })).toBe('value');
  });
});

describe('words', () => {
  test('a title is the caption, what it shows, or the name of a document', () => {
    expect(titleOf({ ...photo, caption: 'upper fade' })).toBe('upper fade');
    expect(titleOf(photo)).toBe('The bow');
    expect(titleOf({ ...photo, mediaType: 'application/pdf', fileName: 'a.pdf' })).toBe('a.pdf');
  });

  test('the spoken words tell caption, subject and moment', () => {
    const said = altOf({ ...photo, caption: 'upper fade' });
    expect(said).toMatch(/^upper fade \(the bow\), taken 1 Mar( 2026)?, 17:45$/);
    expect(altOf({ ...photo, takenAt: null })).toMatch(/^The bow, added 2 Mar/);
  });
});
