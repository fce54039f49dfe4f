/** Said to every page of the bench in this browser when it is signed out. */
export const LEFT = 'left'
