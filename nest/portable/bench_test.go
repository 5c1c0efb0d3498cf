package portable

import "testing"

// BenchmarkSincos is of angles of up to three half turns.
func BenchmarkSincos(b *testing.B) {
	sum := 0.0
	for i := range b.N {
		sin, cos := Sincos(float64(i%1000) / 100)
		sum += sin + cos
	}
	_ = sum
}
