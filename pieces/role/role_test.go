package role

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/seams"
)

func TestRoles(t *testing.T) {
	seen := map[string]bool{}
	for r := range roleCount {
		assert.Equal(t, r != None, r.String() != "", "role %d", r)
		assert.False(t, seen[r.String()], "two roles are called %q", r)
		seen[r.String()] = true
	}
	assert.Equal(t, seams.OnFront, SideFrontBodice.Side())
	assert.Equal(t, seams.OnBack, BackTrousers.Side())
	assert.Equal(t, seams.NoSide, Yoke.Side())
}

// The name of a piece means all that a seam made of it; that of a panel means it alone.
func TestAsked(t *testing.T) {
	assert.Equal(t, []Role{BackBodice, SideBackBodice, Yoke}, Asked("back bodice"))
	assert.Equal(t, []Role{BackBodice}, Asked("middle back bodice"))
	assert.Empty(t, Asked("side back bodice"))
	assert.Empty(t, Asked(""))
}
