package clients

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/folder"
)

func TestWhatWasMeasuredLastStands(t *testing.T) {
	f, err := folder.Open(t.TempDir())
	require.NoError(t, err)
	defer f.Close()
	none, err := Read(f)
	require.NoError(t, err)
	assert.Empty(t, none)
	note := func(name, units, date string, body map[string]string) {
		require.NoError(t, Note(f, name, units, Visit{date, body}))
	}
	note("Ines Barrocal", "cm", "2026-05-02", map[string]string{"bust_girth": "94", "waist_girth": "76"})
	note("Abel Quist", "in", "2026-06-01", map[string]string{"waist_girth": "33 1/2"})
	note("ines barrocal", "in", "2026-11-02", map[string]string{"waist_girth": "31"})
	note("Ines Barrocal", "cm", "2026-07-01", map[string]string{"waist_girth": "77"})
	all, err := Read(f)
	require.NoError(t, err)
	require.Len(t, all, 2)
	assert.Equal(t, "Abel Quist", all[0].Name)
	assert.Equal(t, Client{Name: "Ines Barrocal", Date: "2026-11-02", Units: "cm",
		Body: map[string]string{"bust_girth": "94", "waist_girth": "31 in"}, Visits: all[1].Visits}, all[1])
	assert.Len(t, all[1].Visits, 3)
	assert.NoError(t, os.WriteFile(f.PathOf(FileName), []byte("nothing"), 0o600))
	_, err = Read(f)
	assert.ErrorContains(t, err, "cannot be read")
}

func TestWhatIsNoVisitIsRefused(t *testing.T) {
	f, err := folder.Open(t.TempDir())
	require.NoError(t, err)
	defer f.Close()
	for _, bad := range []Client{
		{Name: " ", Units: "cm", Date: "2026-05-02", Body: map[string]string{"bust_girth": "94"}},
		{Name: "a", Units: "ell", Date: "2026-05-02", Body: map[string]string{"bust_girth": "94"}},
		{Name: "a", Units: "cm", Date: "2.5.26", Body: map[string]string{"bust_girth": "94"}},
		{Name: "a", Units: "cm", Date: "2026-05-02", Body: map[string]string{"shoe": "94"}},
		{Name: "a", Units: "cm", Date: "2026-05-02", Body: map[string]string{"bust_girth": "-9"}},
		{Name: "a", Units: "cm", Date: "2026-05-02"},
	} {
		assert.Error(t, Note(f, bad.Name, bad.Units, Visit{bad.Date, bad.Body}))
	}
	_, err = f.Stat(FileName)
	assert.Error(t, err)
}
