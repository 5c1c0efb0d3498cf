package words

import (
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/language/spoken"
)

// constantsOf a type that is a string, in the files of a package; none stands twice.
func constantsOf[T ~string](t *testing.T, folder, of string) []T {
	t.Helper()
	var out []T
	files, err := filepath.Glob(filepath.Join(folder, "*.go"))
	require.NoError(t, err)
	for _, path := range files {
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		require.NoError(t, err)
		ast.Inspect(file, func(n ast.Node) bool {
			if spec, ok := n.(*ast.ValueSpec); ok && fmt.Sprint(spec.Type) == of {
				text, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
				require.NoError(t, err)
				assert.NotContains(t, out, T(text), "%s stands twice", text)
				out = append(out, T(text))
			}
			return true
		})
	}
	return out
}

// Everything that stands in the way, that a cloth cannot have or that pieces are named for
// has its words, and there are none of another.
func TestEveryFaultIsExplained(t *testing.T) {
	assertSays := func(what string, said language.Sentence) { spoken.Both(t, what, said) }
	obstacles := constantsOf[lay.Obstacle](t, "../lay", "Obstacle")
	require.Greater(t, len(obstacles), 30)
	for _, obstacle := range obstacles {
		assert.Contains(t, explained, obstacle)
		if obstacle != lay.Told {
			assertSays(string(obstacle), Reason(cloth.Cloth{Width: 1400},
				lay.Reason{Of: obstacle, Pieces: []string{"front", "back (2)"}}))
		}
	}
	assert.Len(t, explained, len(obstacles))
	defects := constantsOf[cloth.Defect](t, "../cloth", "Defect")
	require.Greater(t, len(defects), 15)
	for _, defect := range defects {
		assert.Contains(t, faulty, defect)
		assertSays(string(defect), Faulty(cloth.Cloth{}, cloth.Fault{Of: defect, Length: -10, Other: 20, Share: -0.1}))
	}
	assert.Len(t, faulty, len(defects))
	named := constantsOf[lay.Task](t, "../lay", "Task")
	require.Greater(t, len(named), 3)
	for _, task := range named {
		assertSays(string(task), tasks[task])
	}
	assert.Len(t, tasks, len(named))
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
			"a seam (of a band: grain: either, or joins: 1)": lay.Refusal{Cloth: c, Plans: []lay.Plan{folded, open}},
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
