import { randomUUID } from 'node:crypto';

export const newCommandId = () => randomUUID();
