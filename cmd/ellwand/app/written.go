package app

import (
	"io"
	"slices"
	"strconv"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/pieces"
	"ellwand/pieces/dxf"
	piecewords "ellwand/pieces/words"
)

// WriteFile writes the pieces as a file of pieces.
func (c Collection) WriteFile(w io.Writer) error {
	return patternfile.Write(w, c.Title, apart(c.Pieces))
}

// WriteDXF writes the pieces as DXF, by ASTM D6673.
func (c Collection) WriteDXF(w io.Writer) error {
	return piecewords.Refused(dxf.Write(w, c.Title, apart(c.Pieces)))
}

// apart are pieces of which none can be taken for another: one that is cut from
// several cloths stands together, and others of one name and size get the name of
// their garment, or a number.
func apart(all []pieces.Piece) []pieces.Piece {
	type key struct{ name, size string }
	keyOf := func(p pieces.Piece) key { return key{job.Slug(p.Name), p.Size} }
	at := map[key]int{}
	var groups [][]pieces.Piece
	for _, p := range all {
		name := p.Name
		for n := 1; ; n++ {
			i, taken := at[keyOf(p)]
			if taken && (!patternfile.IsSame(groups[i][0], p) || isCutFrom(groups[i], p.Cloth)) {
				if n == 1 && p.Garment != "" {
					p.Name, p.Garment = p.Garment+" "+name, ""
				} else {
					p.Name = name + " " + strconv.Itoa(n)
				}
				continue
			}
			if !taken {
				i = len(groups)
				at[keyOf(p)] = i
				groups = append(groups, nil)
			}
			groups[i] = append(groups[i], p)
			break
		}
	}
	return slices.Concat(groups...)
}

func isCutFrom(all []pieces.Piece, cloth string) bool {
	return slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Cloth == cloth })
}
