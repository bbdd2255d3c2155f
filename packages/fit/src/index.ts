export * from './units.js';
export * from './booth.js';
export * from './assessment.js';
export * from './bodies/dimensions.js';
export * from './format.js';
