package words

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

func TestSharedSentences(t *testing.T) {
	var s Shared
	assert.Empty(t, s.Lines())
	for _, one := range [][2]string{{"a", "too wide"}, {"b", "too wide"}, {"", "nothing helps"}, {"c", "too long"},
		{"a", "too wide"}} {
		s.Add(language.Name(one[0]), language.Name(one[1]))
	}
	assert.Equal(t, []string{"a, b: too wide", "nothing helps", "c: too long"},
		language.Texts(s.Lines(), language.English))
}

// What is joined is said once each, after all that it is about, whatever it is about.
func TestRefusedSaysEachOnce(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Inches: true}
	joined := errors.Join(
		errors.Join(cloth.Fault{Of: cloth.NoWidth, Cloth: "cloth shell"}),
		errors.Join(pieces.Fault{Of: pieces.CutNone, Piece: "cuff"}, lay.Reason{Of: lay.CurvedHem, Piece: "panel"}),
		pieces.Fault{Of: pieces.CutNone, Piece: "collar"},
		lay.Reason{Of: lay.NoSuchPiece, Pieces: []string{"sock"}, Task: lay.ToLieOnTheBorder},
	)
	assert.EqualError(t, Refused(c, joined), "cloth shell: the width is 0 in; give the width of the cloth from edge to "+
		"edge, such as 140 cm\ncuff, collar: the cut count is 0; it must be 1 or more\npanel: its hem is curved and "+
		"cannot lie on the line of the border; straighten the hem, or leave the piece off the border\ncloth shell: there "+
		"is no piece \"sock\" to lie on the border; name a piece that is cut from it")
}
