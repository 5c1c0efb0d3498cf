package store

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

func aProblem() (cloth.Cloth, []pieces.Piece) {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return cloth.Cloth{Name: "shell", Width: 900, Selvedge: 10, PurchaseStep: 100}, []pieces.Piece{pocket}
}

func aPlan() lay.Plan {
	return lay.Plan{Lay: lay.Open, Pieces: []lay.Laid{{Name: "pocket", Turn: 180, X: 200, Y: 310.25}}}
}

// Whatever of a problem changes, changes its key; what the cloth is called does not.
func TestKeyIsTheWholeProblem(t *testing.T) {
	c, all := aProblem()
	first := Key(c, all)
	for name, change := range map[string]func(*cloth.Cloth, *pieces.Piece){
		"width":     func(c *cloth.Cloth, _ *pieces.Piece) { c.Width += 1e-9 },
		"nap":       func(c *cloth.Cloth, _ *pieces.Piece) { c.Nap = cloth.OneWay },
		"shrinkage": func(c *cloth.Cloth, _ *pieces.Piece) { c.Shrinkage.Warp = 0.01 },
		"repeat":    func(c *cloth.Cloth, _ *pieces.Piece) { c.Repeat.Along = 50 },
		"safety":    func(c *cloth.Cloth, _ *pieces.Piece) { c.Safety.Share = 0.01 },
		"cut":       func(_ *cloth.Cloth, p *pieces.Piece) { p.Cut = 6 },
		"pair":      func(_ *cloth.Cloth, p *pieces.Piece) { p.Pair = true },
		"allowance": func(_ *cloth.Cloth, p *pieces.Piece) { p.Edges[0].Allowance = 1 },
		"grain":     func(_ *cloth.Cloth, p *pieces.Piece) { p.Grain.Lie = pieces.Bias },
		"seam":      func(_ *cloth.Cloth, p *pieces.Piece) { p.Edges[0].Name = seams.Called("side seam") },
		"outline":   func(_ *cloth.Cloth, p *pieces.Piece) { p.Edges[0].Path = p.Edges[0].Path.Reverse() },
	} {
		changed, others := aProblem()
		change(&changed, &others[0])
		assert.NotEqual(t, first, Key(changed, others), name)
	}
	c.Name = "remnant"
	assert.Equal(t, first, Key(c, all))
	assert.NotEqual(t, first, Key(c, all, 5))
}

// A field that a later version adds and a problem does not use changes no key.
func TestKeyLeavesOutWhatIsEmpty(t *testing.T) {
	type before struct{ Width float64 }
	type after struct {
		Width float64
		Sheen string
	}
	assert.Equal(t, Key(cloth.Cloth{}, nil, before{5}), Key(cloth.Cloth{}, nil, after{Width: 5}))
	assert.NotEqual(t, Key(cloth.Cloth{}, nil, before{5}), Key(cloth.Cloth{}, nil, after{Width: 5, Sheen: "matt"}))
}

func TestWhatIsAddedIsRead(t *testing.T) {
	s := at(t.TempDir())
	usual, long := Search{Seed: 1, Effort: "usual"}, Search{Seed: 1, Effort: "long"}
	assert.Empty(t, s.Read("a").Plans())
	s.Add("a", s.Read("a"), Found{Plans: []lay.Plan{aPlan()}, By: &usual})
	got := s.Read("a")
	assert.Equal(t, []lay.Plan{aPlan()}, got.Plans())
	assert.True(t, got.Has(usual) && got.IsOnlyOf(usual) && !got.Has(long))

	folded := aPlan()
	folded.Lay = lay.FoldedAlong
	s.Add("a", s.Read("a"), Found{Plans: []lay.Plan{folded}})
	got = s.Read("a")
	assert.Len(t, got.Plans(), 2, "a lay that was not asked stays")
	assert.True(t, got.Has(usual) && !got.Has(long))
	listed, err := os.ReadDir(s.folder)
	require.NoError(t, err)
	assert.Len(t, listed, 1, "nothing beside it")

	var none *Store
	none.Add("a", Entry{}, Found{Plans: []lay.Plan{aPlan()}, By: &usual})
	assert.Empty(t, none.Read("a").Plans())
}

const sound = `{"format_version":2,"searched":[],"lays":[{"lay":"open","folded_in_mm":0,"pieces":[{"name":"a",` +
	`"x_mm":1}]}]}`

// signed gives a text the right signature, where it is an entry at all.
func signed(by signer, text string) string {
	var in file
	if json.Unmarshal([]byte(text), &in) != nil {
		return text
	}
	return strings.Replace(text, `"searched"`, `"signature":"`+by.sign(in)+`","searched"`, 1)
}

// A number that is changed, by accident or on purpose, is found out, and so is a sound
// entry from elsewhere: its layout may be longer than what the search that it names
// would find.
func TestSignatureFindsWhatThisProgramDidNotKeep(t *testing.T) {
	mine := signer("mine")
	_, err := mine.parse([]byte(signed(mine, sound)))
	require.NoError(t, err)
	_, err = mine.parse([]byte(strings.Replace(signed(mine, sound), `"x_mm":1`, `"x_mm":2`, 1)))
	require.Error(t, err)
	_, err = mine.parse([]byte(signed(signer("another"), sound)))
	require.Error(t, err)
	_, err = signer(nil).parse([]byte(signed(nil, sound)))
	require.Error(t, err)
}

// What is no entry is found out, and dropped.
func TestSpoiltEntriesAreDropped(t *testing.T) {
	s := at(t.TempDir())
	require.NoError(t, os.MkdirAll(s.folder, 0o700))
	write := func(text string) {
		require.NoError(t, os.WriteFile(s.path("a"), []byte(text), 0o600))
	}
	write(signed(s.signer, sound))
	require.Len(t, s.Read("a").Plans(), 1)
	for _, text := range []string{
		"", "{", "null", "[]", sound[:len(sound)-9], sound + "{}",
		strings.Replace(sound, `"format_version":2`, `"format_version":3`, 1),
		strings.Replace(sound, `"open"`, `"upside down"`, 1),
		strings.Replace(sound, `"x_mm":1`, `"x_mm":1e308`, 1),
		strings.Replace(sound, `"x_mm":1`, `"x_mm":1e999`, 1),
		strings.Replace(sound, `"x_mm":1`, `"turn_deg":1e9`, 1),
		strings.Replace(sound, `"x_mm":1`, `"part":-1`, 1),
		strings.Replace(sound, `"x_mm":1`, `"length_mm":1`, 1),
		strings.Replace(sound, `"pieces"`, `"along":[{"at_mm":1e99}],"pieces"`, 1),
		strings.Replace(sound, `[{"name":"a","x_mm":1}]`, `[]`, 1),
		sound + strings.Repeat(" ", mostBytes),
	} {
		write(signed(s.signer, text))
		assert.Empty(t, s.Read("a").Plans(), "%.80s", text)
		assert.NoFileExists(t, s.path("a"), "%.80s", text)
	}
}

// The oldest entries go when there are too many, and what a killed process left.
func TestTheStoreIsBounded(t *testing.T) {
	s := at(t.TempDir())
	require.NoError(t, os.MkdirAll(s.folder, 0o700))
	old := time.Now().Add(-48 * time.Hour)
	for _, name := range []string{"b.json", "c.json", ".new-1"} {
		path := filepath.Join(s.folder, name)
		require.NoError(t, os.WriteFile(path, nil, 0o600))
		require.NoError(t, os.Truncate(path, fullAt/2))
		require.NoError(t, os.Chtimes(path, old, old))
		old = old.Add(time.Hour)
	}
	s.Add("a", s.Read("a"), Found{Plans: []lay.Plan{aPlan()}})
	assert.NoFileExists(t, s.path("b"), "the oldest")
	assert.FileExists(t, s.path("c"))
	assert.FileExists(t, s.path("a"))
	assert.NoFileExists(t, filepath.Join(s.folder, ".new-1"))
}

// Whatever bytes are kept, they are an entry within bounds or none.
func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	mine := signer("mine")
	f.Add([]byte(signed(mine, sound)))
	f.Add([]byte(signed(mine, strings.Replace(sound, `"x_mm":1`, `"x_mm":1e308`, 1))))
	f.Add([]byte(sound[:40]))
	f.Fuzz(func(t *testing.T, data []byte) {
		entry, err := mine.parse([]byte(signed(mine, string(data))))
		if err != nil {
			return
		}
		for _, p := range entry.Plans() {
			require.NotEmpty(t, p.Pieces)
			for _, l := range p.Pieces {
				require.Less(t, max(l.X, -l.X, l.Y, -l.Y), farthest)
			}
		}
	})
}

// Two processes that open a store for the first time at once have one secret, and
// nothing that either keeps is lost.
func TestTwoProcessesAtOnce(t *testing.T) {
	folder := t.TempDir()
	var group sync.WaitGroup
	for k := range 4 {
		group.Go(func() {
			one := at(folder)
			for i := range uint64(5) {
				by := Search{Seed: i, Passes: k}
				for !one.Add("a", one.Read("a"), Found{Plans: []lay.Plan{aPlan()}, By: &by}) {
					continue // another was first
				}
				assert.Equal(t, []lay.Plan{aPlan()}, one.Read("a").Plans())
			}
		})
	}
	group.Wait()
	assert.Len(t, at(folder).Read("a").searched, 20, "none is lost")
	listed, err := os.ReadDir(at(folder).folder)
	require.NoError(t, err)
	assert.Len(t, listed, 1, "nothing beside it")
}

// The secret that is spoilt is made anew; what it signed counts as none.
func TestSpoiltSecret(t *testing.T) {
	folder := t.TempDir()
	at(folder).Add("a", Entry{}, Found{Plans: []lay.Plan{aPlan()}})
	require.NoError(t, os.WriteFile(filepath.Join(folder, "secret"), []byte("short"), 0o600))
	again := at(folder)
	require.NotNil(t, again)
	assert.Empty(t, again.Read("a").Plans())
	again.Add("a", Entry{}, Found{Plans: []lay.Plan{aPlan()}})
	assert.Len(t, at(folder).Read("a").Plans(), 1)
}

// Where the match points lie on a repeat is kept too, and what is laid without it apart.
func TestPlacesAreKept(t *testing.T) {
	s := at(t.TempDir())
	matched := aPlan()
	matched.Places = lay.Places{
		{{Kind: lay.PairNode, Index: 2}: 12.5}, {{Kind: lay.PointNode, Name: marks.Called("front armhole")}: 3},
	}
	s.Add("a", s.Read("a"), Found{Plans: []lay.Plan{matched}, Plain: []lay.Plan{aPlan()}})
	assert.Equal(t, []lay.Plan{matched}, s.Read("a").Plans())
	assert.Equal(t, []lay.Plan{aPlan()}, s.Read("a").Plain())
}

// Who began from another entry than there is by now keeps nothing.
func TestAddHoldsToWhatItBeganFrom(t *testing.T) {
	s := at(t.TempDir())
	empty := s.Read("a")
	assert.True(t, s.Add("a", empty, Found{Plans: []lay.Plan{aPlan()}}))
	other := aPlan()
	other.Pieces[0].X = 1
	assert.False(t, s.Add("a", empty, Found{Plans: []lay.Plan{other}}))
	assert.Equal(t, []lay.Plan{aPlan()}, s.Read("a").Plans())
	require.NoError(t, os.WriteFile(s.path("a")+".lock", nil, 0o600))
	old := time.Now().Add(-time.Hour)
	require.NoError(t, os.Chtimes(s.path("a")+".lock", old, old))
	assert.True(t, s.Add("a", s.Read("a"), Found{Plans: []lay.Plan{other}}))
	assert.Equal(t, []lay.Plan{other}, s.Read("a").Plans(), "a lock that was left behind holds nobody up")
}

// What a job was quoted on is kept by its path, within bounds, and a spoilt file is none.
func TestQuotesAreRemembered(t *testing.T) {
	s := at(t.TempDir())
	assert.Nil(t, s.Recall("/a.yaml"))
	quoted := Quoted{"shell": {Offer: "Crepe", Mark: "K7P3-2MXD"}}
	s.Remember("/a.yaml", quoted)
	assert.Equal(t, quoted, s.Recall("/a.yaml"))
	assert.Nil(t, s.Recall("/b.yaml"))
	s.Remember("/b.yaml", Quoted{"shell": {Offer: strings.Repeat("x", mostQuoteBytes)}})
	assert.Nil(t, s.Recall("/b.yaml"), "too large")
	for _, text := range []string{"", "{", `{"format_version":1}`, `{"format_version":2,"cloths":{"a":{"price":1}}}`,
		`{"format_version":2,"cloths":{"a":{"offer":"` + strings.Repeat("x", mostName) + `"}}}`} {
		require.NoError(t, os.WriteFile(s.quotePath("/a.yaml"), []byte(text), 0o600))
		assert.Nil(t, s.Recall("/a.yaml"), "%.40s", text)
	}
	var none *Store
	none.Remember("/a.yaml", quoted)
	assert.Nil(t, none.Recall("/a.yaml"))
}
