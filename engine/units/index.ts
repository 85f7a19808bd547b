export * from './dimension';
