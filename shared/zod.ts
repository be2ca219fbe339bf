import { z } from 'zod';

// A strict content security policy forbids eval, which zod's compiled parsers use.
z.config({ jitless: true });

export { z };
