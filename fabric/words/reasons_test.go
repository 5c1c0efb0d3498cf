package words

import (
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// Every obstacle that fabric/lay knows has a sentence, and there is none of another.
func TestEveryObstacleIsExplained(t *testing.T) {
	known := map[lay.Obstacle]bool{}
	files, err := filepath.Glob("../lay/obstacle*.go")
	require.NoError(t, err)
	for _, path := range files {
		source, err := os.ReadFile(path)
		require.NoError(t, err)
		file, err := parser.ParseFile(token.NewFileSet(), path, source, 0)
		require.NoError(t, err)
		ast.Inspect(file, func(n ast.Node) bool {
			if value, ok := n.(*ast.BasicLit); ok && value.Kind == token.STRING {
				text, err := strconv.Unquote(value.Value)
				require.NoError(t, err)
				assert.False(t, known[lay.Obstacle(text)], "%s is named twice", text)
				known[lay.Obstacle(text)] = true
			}
			return true
		})
	}
	require.Greater(t, len(known), 30)
	for obstacle := range known {
		r := lay.Reason{Of: obstacle, Pieces: []string{"front", "back (2)"}, Text: "as told"}
		text := Reason(cloth.Cloth{Width: 1400}, r)
		assert.Contains(t, explained, obstacle)
		assert.Greater(t, len(text), 5, obstacle)
		assert.NotContains(t, text, "%!", obstacle)
	}
	assert.Len(t, explained, len(known))
}

// What people read of a refusal: the reasons of the open lay alone where it was asked,
// every other error as it is; and programs still know the error.
func TestRefused(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 900}
	wide := []lay.Reason{{Of: lay.WiderThanCloth, Piece: "cape", Takes: 950, Room: 880}}
	single := []lay.Reason{{Of: lay.OddCount, Piece: "yoke", Count: 3}, {Of: lay.FlawsMove}}
	folded, open := lay.Plan{Cloth: c, Lay: lay.FoldedAlong, Why: single}, lay.Plan{Cloth: c, Lay: lay.Open, Why: wide}
	missing := errors.New("the width is missing")
	joined := errors.Join(missing, lay.Reason{Of: lay.CurvedHem, Piece: "panel"})
	wrapped := fmt.Errorf("two at once: %w, %w", missing, missing)
	for want, err := range map[string]error{
		"no lay of cloth shell is possible:\nopen: cape: it is 95 cm wide in the narrowest way its grain allows, and the " +
			"cloth only 88 cm between the selvedges; take a wider cloth, turn the piece to the cross grain, or divide it by " +
			"a seam": lay.Refusal{Cloth: c, Plans: []lay.Plan{folded, open}},
		"it cannot be laid folded along the warp: yoke: 3 single pieces cannot be cut from two plies, which give two at a " +
			"time; lay the cloth open, or cut one more\nthe cloth has flaws, and where the fold or cut across it falls " +
			"depends on the length, so that they would lie elsewhere each time; lay it open or folded along the " +
			"warp": lay.Refusal{Cloth: c, Plans: []lay.Plan{folded}},
		"the width is missing\npanel: its hem is curved and cannot lie on the line of the border; straighten the hem, or " +
			"leave the piece off the border": joined,
		wrapped.Error(): wrapped,
		missing.Error(): missing,
	} {
		got := Refused(c, err)
		assert.EqualError(t, got, want)
		assert.Equal(t, err, errors.Unwrap(got))
	}
	assert.ErrorIs(t, Refused(c, joined), missing)
	assert.NoError(t, Refused(c, nil))
}
