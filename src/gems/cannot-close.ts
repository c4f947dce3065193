/**
 * Why proportions give no closed stone: thrown while one is drawn, and told with what is allowed (`proportions.ts`).
 */
export class CannotClose extends Error {}
