package fabrictest

import (
	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
)

// DraftedBlouse of a size of the women's table; nil when it cannot be drafted.
func DraftedBlouse(size string) []pieces.Piece {
	body, err := draft.Size("women", size)
	if err != nil {
		return nil
	}
	got, err := draft.Draft(draft.Request{
		Garment: "blouse", Cloth: "shell", Size: size, Body: body, Bodice: &bodice.Options{}, Sleeve: &sleeve.Options{},
		Parts: []part.Options{{Kind: part.NeckFacing}, {Kind: part.Cuff}},
	})
	if err != nil {
		return nil
	}
	return got.Pieces
}
