import { type CSSVariablesResolver, createTheme, type MantineColorsTuple } from '@mantine/core';

const spruce: MantineColorsTuple = [
  '#E8F1EF',
  '#D0E1DE',
  '#A6C7C2',
  '#7FB0A9',
  '#5B978F',
  '#41807A',
  '#2C5E57',
  '#255049',
  '#1C3F3A',
  '#132D29',
];
const ochre: MantineColorsTuple = [
  '#FBF3E0',
  '#F5E5BF',
  '#EBCF8B',
  '#E0B65A',
  '#CF9B30',
  '#A87716',
  '#86590B',
  '#6E4908',
  '#553806',
  '#3C2804',
];
const brick: MantineColorsTuple = [
  '#FBEAE6',
  '#F5CFC7',
  '#EDA799',
  '#E38671',
  '#CF5F47',
  '#B64731',
  '#9A3322',
  '#7F281A',
  '#621E13',
  '#46150D',
];
/** Ink first, then quiet ink, rules, raised surface, surface, ground. */
const dark: MantineColorsTuple = [
  '#ECE9E1',
  '#D8D4CA',
  '#B9B4A8',
  '#8A867C',
  '#77736A',
  '#3A3833',
  '#2E2C28',
  '#262522',
  '#1C1B19',
  '#141312',
];

/** Warm neutrals; the fifth draws the edge of every field, at 3:1 against the surface. */
const gray: MantineColorsTuple = [
  '#F8F6F1',
  '#F0EDE5',
  '#E5E1D7',
  '#D5CFC1',
  '#928C80',
  '#857F73',
  '#6E6A60',
  '#57534A',
  '#403D36',
  '#2B2924',
];

const sans = "'Source Sans 3', 'Noto Sans', system-ui, sans-serif";

export const theme = createTheme({
  primaryColor: 'spruce',
  primaryShade: { light: 6, dark: 5 },
  colors: { spruce, ochre, brick, gray, dark },
  black: '#22211E',
  fontFamily: sans,
  headings: { fontFamily: sans, fontWeight: '600' },
  fontSizes: { xs: '13px', sm: '14px', md: '16px', lg: '18px', xl: '22px' },
  defaultRadius: 6,
  cursorType: 'pointer',
  respectReducedMotion: true,
  autoContrast: true,
  spacing: { xs: '8px', sm: '12px', md: '16px', lg: '24px', xl: '32px' },
  shadows: { sm: '0 1px 3px rgb(34 33 30 / 18%)', md: '0 1px 3px rgb(34 33 30 / 18%)' },
  components: {
    Button: { defaultProps: { h: 44 } },
    ActionIcon: { defaultProps: { size: 44, variant: 'subtle' } },
    TextInput: { defaultProps: { size: 'md' } },
    NativeSelect: { defaultProps: { size: 'md' } },
    NumberInput: { defaultProps: { size: 'md', hideControls: true } },
    Textarea: { defaultProps: { size: 'md', autosize: true, minRows: 2 } },
    // A form that opens puts the focus on its first field: the list opens when it is asked for.
    Select: {
      defaultProps: { size: 'md', allowDeselect: false, openOnFocus: false },
      styles: { option: { minHeight: 44 } },
    },
    Autocomplete: { defaultProps: { size: 'md', openOnFocus: false } },
    Checkbox: { defaultProps: { size: 'md' } },
    CheckboxGroup: { defaultProps: { size: 'md' } },
    Radio: { defaultProps: { size: 'md' } },
    RadioGroup: { defaultProps: { size: 'md' } },
    Slider: { defaultProps: { size: 'md', thumbSize: 24 } },
    Switch: { defaultProps: { size: 'md' } },
    Kbd: { styles: { root: { fontSize: '13px' } } },
    Table: { defaultProps: { fz: 'md' } },
    Tabs: { styles: { tab: { fontSize: '16px' } } },
    Menu: { defaultProps: { withInitialFocusPlaceholder: false } },
    Notification: { defaultProps: { closeButtonProps: { 'aria-label': 'Dismiss' } } },
    Modal: {
      styles: {
        title: { fontSize: '18px', fontWeight: 600, lineHeight: 1.3, overflowWrap: 'anywhere' },
      },
      defaultProps: { centered: true, closeButtonProps: { 'aria-label': 'Close', size: 44 } },
    },
  },
});

/** Our own names for the tokens, used by the style sheets of the parts. */
export const variables: CSSVariablesResolver = () => ({
  variables: {},
  light: {
    '--ground': '#F6F4EF',
    '--surface': '#FFFFFF',
    '--ink': '#22211E',
    '--quiet': '#625E55',
    '--rule': '#DAD5C9',
    '--accent': '#2C5E57',
    '--accent-soft': '#E8F1EF',
    '--attention': '#86590B',
    '--attention-soft': '#FBF3E0',
    '--stop': '#9A3322',
    '--stop-soft': '#FBEAE6',
    '--mantine-color-text': '#22211E',
    '--mantine-color-dimmed': '#625E55',
    '--mantine-color-placeholder': '#6E6A60',
    '--mantine-color-error': '#9A3322',
    '--mantine-color-default-border': '#928C80',
  },
  dark: {
    '--ground': '#1C1B19',
    '--surface': '#262522',
    '--ink': '#ECE9E1',
    '--quiet': '#B9B4A8',
    '--rule': '#413F3A',
    '--accent': '#7FB0A9',
    '--accent-soft': '#23332F',
    '--attention': '#E0B65A',
    '--attention-soft': '#3A2F17',
    '--stop': '#EDA799',
    '--stop-soft': '#432720',
    '--mantine-color-text': '#ECE9E1',
    '--mantine-color-dimmed': '#B9B4A8',
    '--mantine-color-placeholder': '#A29D92',
    '--mantine-color-error': '#EDA799',
    '--mantine-color-default-border': '#77736A',
  },
});
