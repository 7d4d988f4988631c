export * from 'danfojs/dist/danfojs-browser/src/index';
