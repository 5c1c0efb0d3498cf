// Package kinds has a change of each kind; its tests see them all.
package kinds

// Least has no switch: constants are declared with what they are.
const Least = 3.0

var table = []float64{2.5, -2}

// Compared has comparisons, and conditions that are joined.
func Compared(x, y int) [5]bool {
	return [5]bool{x < y, x >= y, x == y, x != y && y > 1, x <= y || y > 1}
}

// Reckoned has signs, and numbers that are reckoned while compiling.
func Reckoned(x, y float64) []float64 {
	sum := -x + y*(2*0.5+1)
	sum += x / table[0]
	sum -= Least * table[1]
	sum *= x - y
	sum /= y
	return []float64{sum, max(x, Least)}
}

// Counted has a loop, a condition and a truth.
func Counted(to int) (n int, even bool) {
	for i := 0; i < to; i++ {
		n++
	}
	even = true
	if n%2 == 1 {
		even = false
	}
	return n, even
}
