/** The few functions we use of jstat 1.9.6, which ships no types. */
declare module 'jstat' {
  const jstat: {
    normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
    beta: {
      inv(p: number, alpha: number, beta: number): number;
    };
    gamma: {
      inv(p: number, shape: number, scale: number): number;
    };
    studentt: {
      inv(p: number, df: number): number;
    };
  };
  export default jstat;
}
