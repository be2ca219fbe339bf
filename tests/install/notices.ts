import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = new URL('../../', import.meta.url);
const target = new URL('THIRD-PARTY.md', root);

interface Locked {
  version?: string;
  license?: string;
  dev?: boolean;
  optional?: boolean;
  devOptional?: boolean;
}

const head = `# Third-party notices

Tillermark is built on the packages below. Each comes with its licence text in its own folder
under \`node_modules\`. Source Sans 3 is under the SIL Open Font License 1.1.
Electron (MIT) is used where its window is installed. Made with
\`node tests/install/notices.ts\` from the lock file; a test keeps it true.

| package | version | licence |
| --- | --- | --- |
`;

/** Packages whose manifest names no licence; read from the LICENSE file they ship. */
const readByHand: Record<string, string> = { 'png-js': 'MIT' };

/** The notices as the lock file has them: everything that the running program may load. */
export function notices(): string {
  const lock = JSON.parse(readFileSync(new URL('package-lock.json', root), 'utf8')) as {
    packages: Record<string, Locked>;
  };
  const rows = Object.entries(lock.packages)
    .filter(([path, pkg]) => path !== '' && !pkg.dev && !pkg.devOptional)
    .map(([path, pkg]) => {
      const name = path.replace(/^.*node_modules\//, '');
      return `| ${name} | ${pkg.version ?? ''} | ${pkg.license ?? readByHand[name] ?? 'see its folder'} |`;
    });
  return `${head}${[...new Set(rows)].sort().join('\n')}\n`;
}

export function committedNotices(): string {
  return readFileSync(target, 'utf8');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(target, notices());
