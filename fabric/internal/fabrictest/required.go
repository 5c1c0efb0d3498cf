package fabrictest

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// Brief keeps the searches of the tests short [source.OwnChoice].
var Brief = plan.Options{Passes: 30, Seed: 1, Lays: TwoLays}

// TwoLays that every table has room for.
var TwoLays = []lay.Kind{lay.Open, lay.FoldedAlong}

// Required is what a cloth needs, searched for briefly.
func Required(t *testing.T, c cloth.Cloth, all ...pieces.Piece) plan.Requirement {
	t.Helper()
	got, err := plan.Require(context.Background(), c, all, Brief)
	require.NoError(t, err)
	return got
}
