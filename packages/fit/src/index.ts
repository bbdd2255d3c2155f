export * from './units.js';
export * from './booth.js';
export * from './assessment.js';
export * from './bodies/dimensions.js';
