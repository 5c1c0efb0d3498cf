package proof

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
)

// However much there is to look at, no more is looked at than is asked for, evenly, the
// first always.
func TestSomeOfAList(t *testing.T) {
	list := []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}
	for most, want := range map[int][]int{20: list, 10: list, 5: {0, 2, 4, 6, 8}, 3: {0, 3, 6}, 1: {0}, 0: {0}, -1: {0}} {
		assert.Equal(t, want, some(slices.Clone(list), most), most)
	}
	assert.Empty(t, some([]int{}, 3))
}
