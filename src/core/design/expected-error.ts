/** Error that a written expectation may use: 4 of the 5 %, the fifth is kept for a surprise. */
export const expectedError = 0.04 as const
