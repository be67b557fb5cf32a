package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WordList;

/** Reads the marks to print. */
record MarkNames() implements ValueReader<List<String>> {

    @Override
    public List<String> words() {
        return Annotators.all().stream().map(Annotator::id).toList();
    }

    @Override
    public List<String> read(String option, String list) throws UsageException {
        List<String> ids = WordList.split(list);
        LibraryName.find(name -> Annotators.find(ids), option, list);
        return ids;
    }
}
