import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const file = (name: string) =>
  require.resolve(`@expo-google-fonts/source-sans-3/${name}/SourceSans3_${name}.ttf`);

/** Source Sans 3, embedded in every paper; the same family as the screens. */
export const fonts = {
  regular: file('400Regular'),
  semibold: file('600SemiBold'),
  bold: file('700Bold'),
};
