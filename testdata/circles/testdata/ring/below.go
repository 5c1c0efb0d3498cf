package ring

const base = 1
