package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestIsChildSized(t *testing.T) {
	for _, c := range []struct {
		name string
		body Body
		want bool
	}{
		{"nothing is known", Body{}, false},
		{"short", Body{Height: 1490}, true},
		{"short and full, as small adults are", Body{Height: 1490, BustGirth: 960}, true},
		{"tall and slim", Body{Height: 1500, BustGirth: 700}, false},
		{"a child's chest", Body{BustGirth: 640, HipGirth: 860}, true},
		{"a slim bust", Body{BustGirth: 780}, false},
		{"for a skirt", Body{WaistGirth: 590, HipGirth: 700}, true},
	} {
		assert.Equal(t, c.want, c.body.IsChildSized(), c.name)
	}
}

// No size of a table for adults is taken for a child's, and every one of the
// children's but the largest is.
func TestSizesOfAdultsAreNotChildSized(t *testing.T) {
	for _, table := range Tables() {
		sizes := Sizes(table)
		for i, name := range sizes {
			child := table == "children" && i < len(sizes)-1
			assert.Equal(t, child, size(t, table, name).IsChildSized(), "%s %s", table, name)
		}
	}
}
