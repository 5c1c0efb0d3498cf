// Addresses within the page.

// address of a step of a job, and of what the step shows.
export const address = (name, step, ...rest) =>
  `#/job/${[name, step, ...rest].map(encodeURIComponent).join('/')}`;
