package dxf_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/dxf"
	"ellwand/pieces/found"
	"ellwand/pieces/words"
	"ellwand/testdata/sample"
)

func blocks(values ...any) []byte {
	return append(groups(append([]any{0, "SECTION", 2, "BLOCKS"}, append(values, 0, "ENDSEC")...)...),
		entities(0, "INSERT", 8, "0", 2, "A", 10, 0, 20, 0)...)
}

// Files that are damaged or hostile are refused in a sentence, by what is counted.
func TestRefused(t *testing.T) {
	tests := map[string]struct {
		data []byte
		want string
	}{
		"binary":    {[]byte("Some Binary DXF\r\n\x1a\x00\x00\x00"), "binary DXF"},
		"truncated": {groups(0, "SECTION", 2, "ENTITIES", 0, "LINE", 10), "line 7: a group code|middle of a group"},
		"no code":   {groups(0, "SECTION", 2, "ENTITIES", "LINE", 5), "line 5: a group code is expected"},
		"long code": {groups(0, "SECTION", 2, "ENTITIES", 100000, 5), "line 5: a group code is expected"},
		"not a number": {entities(0, "LINE", 8, "0", 10, "nan", 20, 0, 11, 5, 21, 5),
			`"nan" is no number that a drawing can have`},
		"infinite": {entities(0, "CIRCLE", 8, "0", 10, 0, 20, 0, 40, "1e999"), `is no number`},
		"far":      {entities(0, "CIRCLE", 8, "0", 10, 0, 20, 0, 40, "1e12"), `is no number`},
		"no scale": {entities(0, "INSERT", 8, "0", 2, "A", 10, 0, 20, 0, 41, 0), "the scale 0"},
		"tiny scale": {append(groups(0, "SECTION", 2, "BLOCKS", 0, "BLOCK", 2, "A", 10, 0, 20, 0, 0, "POINT", 10, 0, 20, 0, 0,
			"ENDBLK", 0, "ENDSEC"), entities(0, "INSERT", 2, "A", 41, "1e-12", 42, "1e-12")...), "scale that leaves nothing"},
		"radius": {entities(0, "ARC", 8, "0", 10, 0, 20, 0, 40, -4, 50, 0, 51, 90), "radius -4"},
		"spline": {entities(0, "SPLINE", 8, "0", 71, 3, 10, 0, 20, 0, 40, 1), "do not belong together"},
		"inserts loop": {blocks(0, "BLOCK", 2, "A", 10, 0, 20, 0, 0, "INSERT", 2, "A", 10, 1, 20, 0, 0, "ENDBLK"),
			"too many levels"},
		"too many rows": {blocks(0, "BLOCK", 2, "A", 0, "INSERT", 2, "A", 70, 30000, 71, 30000, 0, "ENDBLK"),
			"too many drawn things"},
	}
	for name, tt := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := dxf.Read(tt.data, found.Options{Limits: enough})
			require.Error(t, err)
			assert.Regexp(t, tt.want, words.Refused(err).Error())
		})
	}
}

// Blocks that insert each other many times are counted, not drawn.
func TestInsertsAreCounted(t *testing.T) {
	var all []any
	for i := range 10 {
		all = append(all, 0, "BLOCK", 2, string(rune('A'+i)), 10, 0, 20, 0)
		for range 100 {
			all = append(all, 0, "INSERT", 2, string(rune('B'+i)), 10, 0, 20, 0)
		}
		all = append(all, 0, "ENDBLK")
	}
	_, err := dxf.Read(blocks(all...), found.Options{Limits: enough})
	var much *found.TooMuch
	require.ErrorAs(t, err, &much)
	assert.Equal(t, found.Things, much.What)
}

// A polyline of a million points is refused by their count.
func TestPointsAreCounted(t *testing.T) {
	head := groups(0, "SECTION", 2, "ENTITIES", 0, "LWPOLYLINE", 8, "0", 70, 1)
	data := append(head, bytes.Repeat([]byte("10\n1\n20\n2\n"), 1_000_000)...)
	_, err := dxf.Read(data, found.Options{Limits: enough})
	var much *found.TooMuch
	require.ErrorAs(t, err, &much)
	assert.Equal(t, found.Vertices, much.What)
	data = groups(0, "SECTION", 2, "ENTITIES", 0, "POLYLINE", 8, "0", 70, 1)
	data = append(data, bytes.Repeat([]byte("0\nVERTEX\n10\n1\n20\n2\n"), 1_000_000)...)
	_, err = dxf.Read(data, found.Options{Limits: enough})
	require.ErrorAs(t, err, &much)
	assert.Equal(t, found.Vertices, much.What)
}

// FuzzRead: whatever is read, what comes of it can be cleaned, completed and written.
func FuzzRead(f *testing.F) {
	sample.MinimizeBriefly()
	var small found.Limits
	for i := range small {
		small[i] = 2000
	}
	small[found.Bytes], small[found.Nesting] = 1<<16, 8
	kept, err := filepath.Glob("../../cmd/ellwand/testdata/*.dxf")
	require.NoError(f, err)
	for _, path := range kept {
		data, err := os.ReadFile(path)
		require.NoError(f, err)
		f.Add(data)
	}
	var jackets bytes.Buffer
	require.NoError(f, dxf.Write(&jackets, "Jacket", jacket()))
	f.Add(jackets.Bytes())
	f.Add(entities(0, "LWPOLYLINE", 8, "1", 90, 4, 70, 1, 10, 0, 20, 0, 42, 0.5, 10, 10, 20, 0, 10, 10, 20, 10))
	f.Add(entities(0, "SPLINE", 71, 2, 40, 0, 40, 0, 40, 0, 40, 1, 40, 1, 40, 1, 10, 0, 20, 0, 10, 5, 20, 9, 10, 9, 20, 0))
	f.Add(entities(0, "ELLIPSE", 10, 0, 20, 0, 11, 40, 21, 3, 40, 0.4, 0, "TEXT", 10, 1, 20, 1, 1, `a\U+00e9`))
	f.Add(blocks(0, "BLOCK", 2, "A", 0, "INSERT", 2, "A", 0, "CIRCLE", 10, 3, 20, 3, 40, 5, 0, "ENDBLK"))
	f.Fuzz(func(t *testing.T, data []byte) {
		o := found.Options{Limits: small, Unit: 1}
		drawing, err := dxf.Read(data, o)
		if err != nil {
			assert.NotEmpty(t, err.Error())
			return
		}
		said := found.Said{Name: "piece", Cut: 1, Grain: found.GrainUp,
			Allowance: found.Allowance{How: found.AllowanceUnknown}}
		for _, p := range drawing.Pieces {
			clean, _, err := found.Clean(p, o)
			if err != nil {
				continue
			}
			piece, _, err := found.Complete(clean, said, o)
			if err == nil {
				require.NoError(t, piece.Check())
				require.NoError(t, dxf.Write(&bytes.Buffer{}, "", []pieces.Piece{piece}))
			}
		}
	})
}
