package kinds

import (
	"reflect"
	"testing"
)

func TestCompared(t *testing.T) {
	for _, tt := range []struct {
		x, y int
		want [5]bool
	}{
		{1, 2, [5]bool{true, false, false, true, true}},
		{2, 2, [5]bool{false, true, true, false, true}},
		{3, 2, [5]bool{false, true, false, true, true}},
		{2, 1, [5]bool{false, true, false, false, false}},
		{0, 1, [5]bool{true, false, false, false, true}},
		{1, 1, [5]bool{false, true, true, false, true}},
	} {
		if got := Compared(tt.x, tt.y); got != tt.want {
			t.Error(tt.x, tt.y, got)
		}
	}
}

func TestReckoned(t *testing.T) {
	if got := Reckoned(5, 2); !reflect.DeepEqual(got, []float64{10.5, 5}) {
		t.Error(got)
	}
	if got := Reckoned(1.25, 2); !reflect.DeepEqual(got, []float64{-3.46875, 3}) {
		t.Error(got)
	}
}

func TestCounted(t *testing.T) {
	for to, want := range []bool{true, false, true, false, true} {
		if n, even := Counted(to); n != to || even != want {
			t.Error(to, n, even)
		}
	}
}
