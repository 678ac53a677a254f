package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.TooLargeObjectInPackException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.EmptyProgressMonitor;
import org.eclipse.jgit.lib.ObjectChecker;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.transport.PackLock;
import org.eclipse.jgit.transport.PackParser;

/** Reads a bundle from somebody else, trusting nothing in it. */
final class BundleReader {
  /** The largest object, once unpacked. */
  static final long LARGEST_OBJECT = 64L << 20;

  private static final int LONGEST_LINE = 4096;
  private static final int MOST_LINES = 20_000;
  private static final int PACK_HEADER = 12;

  /** No object takes fewer bytes in a pack. */
  private static final int LEAST_OBJECT = 8;

  private static final Pattern FIRST_LINE = Pattern.compile("# v([0-9]{1,3}) git bundle");
  private static final Pattern REF = Pattern.compile("[0-9a-f]{40} [^ ].*");

  private final Path file;
  private final Path scratch;
  private final String mark;
  private final Predicate<String> belongs;
  private final LongConsumer progress;
  private final SortedMap<String, ObjectId> wanted = new TreeMap<>();

  BundleReader(
      Path file,
      Path scratch,
      String mark,
      Predicate<String> belongs,
      LongConsumer progress) {
    this.file = file;
    this.scratch = scratch;
    this.mark = mark;
    this.belongs = belongs;
    this.progress = progress;
  }

  void read() {
    try {
      long size = Files.size(file);
      if (size > BundleFile.MOST_BYTES) {
        throw bad(
            "It is larger than the " + (BundleFile.MOST_BYTES >> 20) + " MB that are read.");
      }
      try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
        header(in);
        refuseAbsurd(in, size);
        unpack(in);
      }
    } catch (TooLargeObjectInPackException e) {
      throw bad(
          "Something in it is larger than the " + (LARGEST_OBJECT >> 20) + " MB that are read.");
    } catch (CorruptObjectException e) {
      throw bad(damaged(e));
    } catch (EOFException e) {
      throw bad("It ends too early: ask for it again.");
    } catch (IOException e) {
      throw bad("It cannot be read (" + e.getMessage() + ").");
    } catch (IndexOutOfBoundsException | IllegalArgumentException | NegativeArraySizeException e) {
      throw bad("Something in it is damaged.");
    }
  }

  private static String damaged(CorruptObjectException e) {
    ObjectChecker.ErrorType type = e.getErrorType();
    if (type == null) {
      return "Something in it is damaged (" + shown(e.getMessage()) + ").";
    }
    return switch (type) {
      case HAS_DOT, HAS_DOTDOT, HAS_DOTGIT, FULL_PATHNAME, EMPTY_NAME, WIN32_BAD_NAME ->
          "It holds a file whose name leads out of the notebook or into Git's own folder.";
      case DUPLICATE_ENTRIES -> "It holds two files whose names are one on some machines.";
      default -> "Something in it is damaged or not allowed (" + shown(e.getMessage()) + ").";
    };
  }

  private void header(InputStream in) throws IOException {
    var first = FIRST_LINE.matcher(line(in));
    if (!first.matches()) {
      throw bad("It is not a Git bundle.");
    }
    int version = Integer.parseInt(first.group(1));
    if (version != 2 && version != 3) {
      throw bad("It is a Git bundle of version " + version + ", not 2 or 3.");
    }
    int lines = 0;
    for (String line = line(in); !line.isEmpty(); line = line(in)) {
      if (++lines > MOST_LINES) {
        throw bad("It names more than " + MOST_LINES + " branches and tags.");
      }
      if (version == 3 && line.startsWith("@")) {
        if (!line.equals("@object-format=sha1")) {
          throw bad("It uses something that is not supported (" + shown(line.substring(1)) + ").");
        }
      } else if (line.startsWith("-")) {
        throw bad("It is only the newest part of a history: ask for the whole of it.");
      } else if (!REF.matcher(line).matches()) {
        throw bad("Its list of branches is damaged.");
      } else {
        branch(line.substring(41), ObjectId.fromString(line.substring(0, 40)));
      }
    }
    if (!wanted.containsKey(Constants.R_HEADS + GitStore.MAIN)) {
      throw bad("It has no branch main, which is a notebook's main line.");
    }
  }

  private void branch(String ref, ObjectId target) {
    boolean used =
        ref.equals(Constants.R_HEADS + GitStore.MAIN)
            || ref.startsWith(Constants.R_HEADS + "variant/")
            || ref.startsWith(Constants.R_TAGS + "published/");
    if (used && (!Repository.isValidRefName(ref) || ref.contains("/-"))) {
      throw bad("It names a branch or tag that Git does not allow (" + shown(ref) + ").");
    }
    if (used) {
      wanted.put(ref, target);
    }
  }

  static String shown(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", "?");
    return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
  }

  private String line(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0 || line.size() >= LONGEST_LINE) {
        throw bad(line.size() >= LONGEST_LINE || wanted.isEmpty()
            ? "It is not a Git bundle."
            : "It ends too early: ask for it again.");
      }
      line.write(next);
    }
    return line.toString(StandardCharsets.UTF_8);
  }

  /** Before anything is made room for. */
  private void refuseAbsurd(InputStream in, long size) throws IOException {
    in.mark(PACK_HEADER);
    byte[] header = in.readNBytes(PACK_HEADER);
    in.reset();
    if (header.length < PACK_HEADER) {
      throw bad("It ends too early: ask for it again.");
    }
    long count = ByteBuffer.wrap(header).getInt(PACK_HEADER - 4) & 0xFFFF_FFFFL;
    if (count > size / LEAST_OBJECT) {
      throw bad("Something in it is damaged (it claims to hold " + count + " objects).");
    }
  }

  private void unpack(InputStream in) throws IOException {
    try (GitStore store = GitStore.create(scratch)) {
      Repository repository = store.jgit();
      try (ObjectInserter inserter = repository.newObjectInserter()) {
        PackParser parser = inserter.newPackParser(in);
        parser.setAllowThin(false);
        parser.setCheckEofAfterPackFooter(true);
        parser.setMaxObjectSizeLimit(LARGEST_OBJECT);
        parser.setObjectChecker(
            new ObjectChecker()
                .setSafeForWindows(true)
                .setSafeForMacOS(true)
                .setAllowInvalidPersonIdent(true));
        PackLock lock = parser.parse(new Counting(progress));
        if (lock != null) {
          lock.unlock();
        }
        inserter.flush();
      }
      refuseOther(store);
      new BundleInspection(repository, this::bad, belongs).run(wanted.values());
      for (Map.Entry<String, ObjectId> each : wanted.entrySet()) {
        BundleFile.makeRef(repository, each.getKey(), each.getValue());
      }
    }
  }

  private void refuseOther(GitStore store) throws IOException {
    ObjectId main = wanted.get(Constants.R_HEADS + GitStore.MAIN);
    try (RevWalk walk = new RevWalk(store.jgit())) {
      if (!(walk.peel(walk.parseAny(main)) instanceof RevCommit commit)
          || store.blob(new CommitId(commit.name()), mark).isEmpty()) {
        throw bad("It is no notebook: its main line has no " + mark + ".");
      }
    } catch (MissingObjectException e) {
      throw bad("Something is missing in it (" + e.getObjectId().name() + ").");
    }
  }

  /** Tells how many objects are read. */
  private static final class Counting extends EmptyProgressMonitor {
    private final LongConsumer progress;
    private long done;

    Counting(LongConsumer progress) {
      this.progress = progress;
    }

    @Override
    public void update(int completed) {
      done += completed;
      progress.accept(done);
    }
  }

  private StoreException bad(String sentence) {
    return new StoreException(
        Reason.BAD_BUNDLE,
        file.getFileName().toString(),
        "The bundle cannot be taken in. " + sentence);
  }
}
