/** Countries as people write them into an address; names of ISO 3166-1 by the language data of the runtime. */

const plain = (written: string) =>
  written
    .normalize('NFD')
    .replaceAll(/[\u0300-\u036f.]/g, '')
    .trim()
    .toLowerCase()
    .replace(/^the /, '')
    .replaceAll(/\s+/g, ' ');

/** Usual names beside the ones of the runtime. */
const otherNames: Record<string, string> = {
  usa: 'US',
  'united states of america': 'US',
  america: 'US',
  uk: 'GB',
  'great britain': 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  'northern ireland': 'GB',
  'czech republic': 'CZ',
  turkey: 'TR',
  holland: 'NL',
  'south korea': 'KR',
  'republic of ireland': 'IE',
};

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

function allNames(): Map<string, string> {
  const names = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
  const codes = new Map<string, string>();
  for (const code of letters.flatMap((a) => letters.map((b) => a + b))) {
    const name = names.of(code);
    if (name === undefined) continue;
    codes.set(plain(name), code);
    codes.set(plain(code), code);
  }
  for (const [name, code] of Object.entries(otherNames)) codes.set(name, code);
  return codes;
}

let known: Map<string, string> | null = null;

/** The two letters of ISO 3166-1, or null where the words name no country known here. */
export function countryCode(written: string): string | null {
  known ??= allNames();
  return known.get(plain(written)) ?? null;
}

/** Whether two addresses lie in one country. Words that name no known country are compared as they stand. */
export function isSameCountry(a: string, b: string): boolean {
  const [code, other] = [countryCode(a), countryCode(b)];
  return code === null || other === null ? plain(a) === plain(b) : code === other;
}
